/** What a sheet calls its fields, in the language of the page where the words are known. */
import { labelWords } from '../../../engine/sentences/score-sentences.ts';
import type { Speech } from '../../../engine/sentences/speech.ts';
import type { Words } from '../../shared/words.tsx';
import type { SheetField } from './sheet-fields.ts';

/** As the sheet says it, until the words are there and where it has words of its own. */
export const labelOf = (label: string, speech: Speech | undefined): string =>
  speech === undefined ? label : labelWords(label, speech);

export interface FieldLabel {
  /** Over the field. */
  readonly short: string;
  /** For a screen reader, and for whoever points at it; it begins with `short`. */
  readonly long: string;
}

interface Teller extends Pick<Words, 't'> {
  readonly speech: Speech | undefined;
}

export function labelOfField(field: SheetField, { t, speech }: Teller): FieldLabel {
  switch (field.kind) {
    case 'maneuver': {
      const { position, name } = field.maneuver;
      return { short: String(position), long: `${position} ${name}` };
    }
    case 'extra': {
      const label = labelOf(field.extra.label, speech);
      return { short: label, long: label };
    }
    case 'mark':
    case 'measure':
    case 'errors':
    case 'penalties': {
      const label = t(`office-paper-field-${field.kind}`);
      return { short: label, long: label };
    }
  }
}
