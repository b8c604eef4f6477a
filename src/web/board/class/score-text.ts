/** A score or total as its sheet writes it. */
import { decimalText, figureText } from '../../shared/figure-words.ts';
import type { Sheet } from './class-answer.ts';

interface Written {
  readonly kind: Sheet['kind'];
  readonly language: string;
}

/** `214½` on a pattern's sheet, `66.346` in percent or seconds. */
export function scoreText(score: string, { kind, language }: Written): string {
  switch (kind) {
    case 'pattern':
    case 'one-mark':
    case 'places':
      return figureText(score, language);
    case 'percentage':
    case 'measured':
      return decimalText(score, language);
  }
}
