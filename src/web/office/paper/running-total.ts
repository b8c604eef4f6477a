/** What a typed go comes to, by the same engine as the service, so that a slip shows while it is typed. */
import { parseDecimal } from '../../../engine/numbers/exact.ts';
import { readingText } from '../../../engine/numbers/number-text.ts';
import { round } from '../../../engine/numbers/rounding.ts';
import { isMissing } from '../../../engine/sheets/reading.ts';
import { type RunningScore, runningScore } from '../../../engine/sheets/score-go.ts';
import type { Go, GoFault } from '../../../engine/sheets/types.ts';
import { extraKey, goKeys, type MarkedSheet, maneuverKey } from './sheet-fields.ts';

export interface TypedTotal {
  /** For reading: `"71.5"`; `undefined` where nothing is scored. */
  readonly total: string | undefined;
  /** Every field that the go needs is there. */
  readonly whole: boolean;
  readonly placed: RunningScore['tier'];
  /** What the sheet does not allow, by the key of its field. */
  readonly faults: ReadonlyMap<string, GoFault>;
  /** Beside the total that the judge wrote on the paper. */
  readonly paper: 'not-typed' | 'same' | 'differs';
}

export function typedTotal(marked: MarkedSheet, go: Go, paperTotal = ''): TypedTotal {
  const running = runningScore(marked.sheet, marked.maneuvers, go);
  const wrong = running.faults.filter((fault) => !isMissing(fault));
  const whole = running.faults.length === 0;
  return {
    total: running.score === undefined ? undefined : readingText(running.score),
    whole,
    placed: running.tier,
    faults: new Map(wrong.map((fault) => [fieldOf(fault, go), fault])),
    paper: whole ? compared(running.score, paperTotal) : 'not-typed',
  };
}

/** As many digits as the judge wrote: 66.35 on the paper is the same as 66.346. */
function compared(score: RunningScore['score'], paperTotal: string): TypedTotal['paper'] {
  const written = parseDecimal(paperTotal.trim().replace(',', '.'));
  if (score === undefined || paperTotal.trim() === '') return 'not-typed';
  if (written === undefined) return 'differs';
  const places = paperTotal.trim().replace(',', '.').split('.')[1]?.length ?? 0;
  return round(score, { places, mode: 'half-up' }).equals(written) ? 'same' : 'differs';
}

function fieldOf({ at, position }: GoFault, go: Go): string {
  const [, part = '', name = ''] = at.split('/');
  switch (part) {
    case 'maneuvers':
      return maneuverKey(position ?? 0);
    case 'extras':
      return extraKey(name.replaceAll('~1', '/').replaceAll('~0', '~'));
    case 'penalties':
      return penaltyField(go.penalties?.[Number(name)]?.position);
    case 'errorsOfCourse':
      return goKeys.errors;
    case 'ruling':
      return goKeys.ruling;
    default:
      return part === '' ? goKeys.paperTotal : part;
  }
}

const penaltyField = (position: number | undefined): string =>
  position === undefined ? goKeys.penalties : maneuverKey(position);
