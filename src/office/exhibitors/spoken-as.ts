import { nameText } from '../schemas/text.ts';

/** How a name is spoken, in whatever spelling helps the announcer. Like a name, it is one line. */
export const spokenAs = nameText.meta({ maxLength: 200, examples: ['ah-NOOK oh-DUNN-ell'] });
