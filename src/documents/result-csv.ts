/** A posted result as a table: one row for each entry, first place first; what everyone may read and no more. */
import type { PostedResult } from '../results/index.ts';
import { type Cell, csvText } from './csv.ts';

const columns = [
  'class',
  'class name',
  'posting',
  'state',
  'judge',
  'place',
  'tied',
  'back number',
  'exhibitor',
  'horse',
  'total',
  'why',
] as const;
type Row = Readonly<Record<(typeof columns)[number], Cell>>;

/** Where each judge places for herself, her name stands in the column "judge"; merged results leave it empty. */
export function resultCsv(result: PostedResult): string {
  const rows = [...result.results.flatMap((one) => judgeRows(result, one)), ...absentRows(result)];
  return csvText(columns, rows);
}

type OneResult = PostedResult['results'][number];

function judgeRows(result: PostedResult, { judge, placings, unplaced }: OneResult): Row[] {
  const placed = placings.map(({ place, tied, total, because, ...who }) => ({
    ...headOf(result, judge?.name ?? null),
    ...whoOf(who),
    ...{ place, tied: tied ? 'yes' : 'no', total, why: because.join(' ') },
  }));
  const others = unplaced.map(({ why, ...who }) => ({
    ...headOf(result, judge?.name ?? null),
    ...whoOf(who),
    ...{ place: null, tied: null, total: null, why },
  }));
  return [...placed, ...others];
}

function absentRows(result: PostedResult): Row[] {
  return result.didNotGo.map(({ status, ...who }) => ({
    ...headOf(result, null),
    ...whoOf(who),
    ...{ place: null, tied: null, total: null, why: status },
  }));
}

const headOf = ({ practice, class: ofClass, posting }: PostedResult, judge: string | null) => ({
  class: ofClass.number,
  'class name': ofClass.name,
  posting: posting.version,
  state: practice ? `practice (${posting.state})` : posting.state,
  judge,
});

interface Who {
  readonly backNumber: number;
  readonly name: string;
  readonly horse: string | null;
}

const whoOf = ({ backNumber, name, horse }: Who) => ({ 'back number': backNumber, exhibitor: name, horse });
