/** The script of the board's pages. */
import '../shared/paper.css';
import { startPublicPage } from '../shared/start-public-page.tsx';
import { boardPages } from './pages.tsx';

void startPublicPage(boardPages);
