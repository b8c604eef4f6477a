/** A score or total as the sentences beside it write it: "224.5", in German "224,5". */
import { decimalText } from '../../shared/figure-words.ts';

export const scoreText = (score: string, { language }: { readonly language: string }): string =>
  decimalText(score, language);
