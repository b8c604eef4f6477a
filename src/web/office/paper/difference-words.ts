/** Where the two who typed one card differ: in which field of the form, and what each has there, in words. Pure. */
import type { Speech } from '../../../engine/sentences/speech.ts';
import type { Part } from '../../shared/api.ts';
import type { Words } from '../../shared/words.tsx';
import { labelOf } from './labels.ts';
import { markText } from './mark-words.ts';
import { fieldId } from './move-on.ts';
import {
  extraKey,
  goKeys,
  type MarkedSheet,
  maneuverKey,
  maneuverWordsKey,
  penaltiesOf,
} from './sheet-fields.ts';

export type Difference = Part<'PaperEntryDifference'>;

/** Key of the field in which it is mended. */
export function keyOfDifference({ part, position, code }: Difference): string {
  switch (part) {
    case 'maneuver':
      return maneuverKey(position ?? 0);
    case 'maneuver-remark':
      return maneuverWordsKey(position ?? 0);
    case 'extra':
      return extraKey(code ?? '');
    case 'penalty':
      return position === null ? goKeys.penalties : maneuverKey(position);
    case 'errors-of-course':
      return goKeys.errors;
    case 'mark':
    case 'measure':
    case 'ruling':
      return goKeys[part];
    case 'ruling-remark':
      return goKeys.rulingWords;
    case 'remark':
      return goKeys.words;
    case 'own-order':
      return goKeys.tiePlace;
    case 'ranking':
      return 'ranking';
  }
}

export const idOfDifference = (difference: Difference): string =>
  fieldId(difference.classEntryId, keyOfDifference(difference));

interface Teller extends Words {
  readonly card: MarkedSheet;
  readonly speech: Speech | undefined;
}

/** "Maneuver 3 (Lope to C)", "Penalty: break of gait, maneuver 2" */
export function fieldWords(difference: Difference, { t, card, speech }: Teller): string {
  const { part, position, code } = difference;
  const name = card.maneuvers.find((one) => one.position === position)?.name ?? '';
  const maneuver = position === null ? '' : t('office-paper-maneuver', { position, name });
  switch (part) {
    case 'maneuver':
      return maneuver;
    case 'maneuver-remark':
      return t('office-paper-part-remark-at', { maneuver });
    case 'extra':
      return labelOf(labelIn(extrasOf(card), code), speech);
    case 'penalty': {
      const label = labelOf(labelIn(penaltiesOf(card.sheet), code), speech);
      return position === null ? label : t('office-paper-part-at', { label, maneuver });
    }
    case 'errors-of-course':
    case 'mark':
    case 'measure':
    case 'ruling':
    case 'ruling-remark':
    case 'remark':
    case 'own-order':
    case 'ranking':
      return t(`office-paper-part-${part}`);
  }
}

/** What one of the two has there. */
export function valueWords(difference: Difference, text: string | null, teller: Teller): string {
  const { t, card, speech, language } = teller;
  if (text === null) return t('office-paper-nothing');
  switch (difference.part) {
    case 'maneuver':
      return text === 'not seen'
        ? t('office-paper-not-seen')
        : markText(text, { signed: card.sheet.kind === 'pattern' }, language);
    case 'extra':
    case 'mark':
    case 'measure':
      return markText(text, { signed: false }, language);
    case 'penalty':
      return t('office-paper-times', { count: Number(text) });
    case 'ruling':
      return speech?.find(`ruling-${text}`) ?? text;
    case 'own-order':
      return t('office-paper-in-tie', { place: text.split(' ')[0] ?? text });
    case 'ranking':
      return t('office-paper-place', { place: text });
    case 'maneuver-remark':
    case 'errors-of-course':
    case 'ruling-remark':
    case 'remark':
      return text;
  }
}

const extrasOf = ({ sheet }: MarkedSheet) =>
  sheet.kind === 'pattern' ? sheet.extras : sheet.kind === 'percentage' ? sheet.collectives : [];

const labelIn = (parts: readonly { readonly code: string; readonly label: string }[], code: string | null) =>
  parts.find((one) => one.code === code)?.label ?? code ?? '';
