/** The pages of the board: every page that says where a show stands. */
import type { PublicPage } from '../shared/public-page.ts';
import { boardPage } from './board-page.tsx';
import { classPage } from './class/class-page.tsx';
import { screenPage } from './screen/screen-page.tsx';
import { showsPage } from './shows-page.tsx';

export const boardPages: readonly PublicPage[] = [showsPage, boardPage, classPage, screenPage];
