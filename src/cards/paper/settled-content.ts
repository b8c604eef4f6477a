/**
 * A card that was typed off paper in one spelling, so that two people who mean the same have typed the same: `1.50`
 * is `1.5`, maneuvers stand in the order of the pattern, spaces in a remark do not count, what is empty is left out.
 * Nothing that a judge could mean is changed; what is not a decimal stays as it was typed, for the check to name.
 */
import { parseDecimal } from '../../engine/numbers/exact.ts';
import { recordText } from '../../engine/numbers/number-text.ts';
import type { CardContent } from '../../engine/sheets/card-types.ts';
import type { Go, ManeuverMark } from '../../engine/sheets/types.ts';

type Groups = readonly (readonly string[])[];

export function settledContent({ goes, ownOrder = [], ranking = [] }: CardContent): CardContent {
  const written = Object.entries(goes).map(([id, go]) => [id, settledGo(go)] as const);
  return {
    goes: Object.fromEntries(written.filter(([, go]) => Object.keys(go).length > 0)),
    ...(ownOrder.length === 0 ? {} : { ownOrder: inOrder(ownOrder) }),
    ...(ranking.length === 0 ? {} : { ranking: ranking.map((group) => [...group].sort()) }),
  };
}

/** Which tie is named first says nothing; the order within a tie is the judge's. */
const inOrder = (ties: Groups): Groups =>
  [...ties].sort((a, b) => compare(JSON.stringify(a), JSON.stringify(b)));

function settledGo({ maneuvers = [], extras = {}, penalties = [], ruling, ...go }: Go): Go {
  const marks = Object.entries(extras).map(([code, mark]) => [code, plainMark(mark)] as const);
  return {
    ...(maneuvers.length === 0 ? {} : { maneuvers: byPosition(maneuvers).map(settledManeuver) }),
    ...(marks.length === 0 ? {} : { extras: Object.fromEntries(marks) }),
    ...(penalties.length === 0 ? {} : { penalties: [...penalties].sort(comparePenalties) }),
    ...(ruling === undefined ? {} : { ruling: { code: ruling.code, ...plainRemark(ruling) } }),
    ...(go.errorsOfCourse ? { errorsOfCourse: go.errorsOfCourse } : {}),
    ...(go.mark === undefined ? {} : { mark: plainMark(go.mark) }),
    ...(go.measure === undefined ? {} : { measure: plainMark(go.measure) }),
    ...plainRemark(go),
  };
}

const byPosition = (maneuvers: readonly ManeuverMark[]) =>
  [...maneuvers].sort((a, b) => a.position - b.position);

function settledManeuver(one: ManeuverMark): ManeuverMark {
  const remark = plainRemark(one);
  if ('notSeen' in one) return { position: one.position, notSeen: true, ...remark };
  return { position: one.position, mark: plainMark(one.mark), ...remark };
}

type Penalties = NonNullable<Go['penalties']>;

/** Those against the whole go first. */
const comparePenalties = (a: Penalties[number], b: Penalties[number]) =>
  (a.position ?? 0) - (b.position ?? 0) || compare(a.code, b.code);

const compare = (a: string, b: string) => Number(a > b) - Number(a < b);

function plainMark(text: string): string {
  const mark = parseDecimal(text);
  return mark === undefined ? text : recordText(mark);
}

function plainRemark({ remark = '' }: { readonly remark?: string }): { readonly remark?: string } {
  const words = remark.normalize('NFC').replaceAll(/\s+/g, ' ').trim();
  return words === '' ? {} : { remark: words };
}
