/** A family's pages: finding an entry, and what it got. */
import type { PublicPage } from '../shared/public-page.ts';
import { findPage } from './find-page.tsx';
import { numberPage } from './number-page.tsx';

export const exhibitorPages: readonly PublicPage[] = [findPage, numberPage];
