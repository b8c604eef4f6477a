/** The fields of one go on the sheet of a class, in the order in which they are typed. */
import type {
  ExtraMark,
  MarkRange,
  Penalty,
  RulingCode,
  ScoreSheet,
  SheetManeuver,
} from '../../../engine/sheets/types.ts';

/** What the typist needs of a class to type its cards. */
export interface MarkedSheet {
  readonly sheet: ScoreSheet;
  readonly maneuvers: readonly SheetManeuver[];
}

/** `key`: under which its text is kept. A mark field takes penalties too where it belongs to a maneuver or the go. */
export type SheetField =
  | {
      readonly kind: 'maneuver';
      readonly key: string;
      readonly range: MarkRange;
      readonly maneuver: SheetManeuver;
    }
  | { readonly kind: 'extra'; readonly key: string; readonly range: MarkRange; readonly extra: ExtraMark }
  | { readonly kind: 'mark' | 'measure'; readonly key: string; readonly range: MarkRange }
  | { readonly kind: 'errors' | 'penalties'; readonly key: string };

export const maneuverKey = (position: number): string => `maneuver-${position}`;
export const maneuverWordsKey = (position: number): string => `maneuver-words-${position}`;
export const extraKey = (code: string): string => `extra-${code}`;
/** What every go has, whatever its sheet. `paper-total` is compared and not sent. */
export const goKeys = {
  mark: 'mark',
  measure: 'measure',
  errors: 'errors',
  penalties: 'penalties',
  ruling: 'ruling',
  rulingWords: 'ruling-words',
  words: 'words',
  tiePlace: 'tie-place',
  paperTotal: 'paper-total',
} as const;

/** None on a sheet of places: there the ranking is typed. */
export function fieldsOf({ sheet, maneuvers }: MarkedSheet): readonly SheetField[] {
  switch (sheet.kind) {
    case 'pattern':
      return [
        ...maneuverFields(maneuvers, sheet.maneuver),
        ...sheet.extras.map(extraField),
        ...penaltyField(sheet.penalties),
      ];
    case 'percentage':
      return [
        ...maneuverFields(maneuvers, sheet.maneuver),
        ...sheet.collectives.map(extraField),
        { kind: 'errors', key: goKeys.errors },
      ];
    case 'one-mark':
      return [{ kind: 'mark', key: goKeys.mark, range: sheet.mark }, ...penaltyField(sheet.penalties)];
    case 'measured':
      return [
        { kind: 'measure', key: goKeys.measure, range: sheet.measure },
        ...penaltyField(sheet.penalties),
      ];
    case 'places':
      return [];
  }
}

export const penaltiesOf = (sheet: ScoreSheet): readonly Penalty[] =>
  'penalties' in sheet ? sheet.penalties : [];

export const rulingsOf = (sheet: ScoreSheet): readonly RulingCode[] =>
  Object.keys(sheet.rulings) as RulingCode[];

const maneuverFields = (maneuvers: readonly SheetManeuver[], range: MarkRange): SheetField[] =>
  maneuvers
    .toSorted((a, b) => a.position - b.position)
    .map((maneuver) => ({ kind: 'maneuver', key: maneuverKey(maneuver.position), range, maneuver }));

const extraField = (extra: ExtraMark): SheetField => ({
  kind: 'extra',
  key: extraKey(extra.code),
  range: extra.range,
  extra,
});

const penaltyField = (penalties: readonly Penalty[]): SheetField[] =>
  penalties.length === 0 ? [] : [{ kind: 'penalties', key: goKeys.penalties }];
