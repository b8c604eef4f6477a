/** A paper card as the service answers it. */
import type { CardContent } from '../../../engine/sheets/card-types.ts';
import type { Part } from '../../shared/api.ts';

export type PaperCard = Part<'PaperCard'>;

/** What this account entered. The generated type spells a mark more loosely than the service lets one in. */
export const savedOf = ({ mine }: PaperCard): CardContent | undefined =>
  mine === null ? undefined : (mine.content as CardContent);
