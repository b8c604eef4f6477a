/** All that the phone holds, as JSON that an office can key in from: by class number and back number, marks as written. */
import { recordText } from '../../../engine/numbers/number-text.ts';
import { runningScore } from '../../../engine/sheets/score-go.ts';
import type { Go } from '../../../engine/sheets/types.ts';
import { maneuversOf } from './card-content.ts';
import type { DayClass } from './day-types.ts';
import { type KeptPhone, type KeptSignature, orderPart, type Writing } from './records.ts';
import { isUnsent } from './store.ts';

export const exportForm = 'ringledger phone export 1';

export interface Exported {
  readonly phone: KeptPhone | undefined;
  readonly classes: readonly {
    readonly day: DayClass;
    readonly writings: readonly Writing[];
    readonly signatures: readonly KeptSignature[];
  }[];
  /** Remarks on maneuvers without a mark, by `<class entry>/<position>`; left out: none are told. */
  readonly remarks?: Readonly<Record<string, string>>;
}

export function exportOf({ phone, classes, remarks = {} }: Exported): string {
  const { phone: head = null, thumbprint = null } = phone ?? {};
  const told = {
    form: exportForm,
    exportedAt: new Date().toISOString(),
    show: head?.show.name ?? null,
    judge: head?.judge.name ?? null,
    writtenBy: head?.role ?? null,
    phoneId: head?.id ?? null,
    keyThumbprint: thumbprint,
    classes: classes.map(classOf),
    remarksWithoutMark: Object.entries(remarks).map(remarkOf(classes)),
  };
  return JSON.stringify(told, null, 2);
}

function remarkOf(classes: Exported['classes']) {
  const entries = classes.flatMap(({ day }) => day.entries);
  return ([place, remark]: [string, string]) => {
    const [entry, position] = place.split('/');
    const backNumber = entries.find(({ classEntryId }) => classEntryId === entry)?.backNumber ?? null;
    return { backNumber, maneuver: Number(position), remark };
  };
}

function classOf({ day, writings, signatures }: Exported['classes'][number]) {
  const numbers = new Map(day.entries.map(({ classEntryId, backNumber }) => [classEntryId, backNumber]));
  const byNumber = (groups: readonly (readonly string[])[]) =>
    groups.map((group) => group.map((id) => numbers.get(id) ?? id));
  const order = writings.find(({ part }) => part === orderPart)?.content ?? {};
  const { ownOrder = [], ranking = [] } = 'ownOrder' in order || 'ranking' in order ? order : {};
  const goes = writings.filter(({ part }) => part !== orderPart);
  return {
    number: day.number,
    name: day.name,
    sheet: day.sheetName,
    cardId: day.card.cardId,
    goes: goes
      .map((writing) => goOf(day, writing, numbers.get(writing.part) ?? null))
      .sort((a, b) => (a.backNumber ?? 0) - (b.backNumber ?? 0)),
    tiesBrokenByBackNumber: byNumber(ownOrder),
    rankingByBackNumber: byNumber(ranking),
    signed: signatures.map(({ revision, signedAt, reason, contentHash, state, jws }) => ({
      ...{ revision, signedAt, reason, contentHash, state, jws },
    })),
    signedAtTheService: day.card.signed,
  };
}

function goOf(day: DayClass, writing: Writing, backNumber: number | null) {
  const go = writing.content as Go;
  const { score } = runningScore(day.sheet, maneuversOf(day), go);
  const conflict = writing.conflict === null ? {} : { otherPhoneWrote: writing.conflict.theirs };
  const refused = writing.refused === null ? {} : { refusedWith: writing.refused };
  return {
    backNumber,
    total: score === undefined ? null : recordText(score),
    atTheService: !isUnsent(writing),
    ...{ go, ...conflict, ...refused },
  };
}
