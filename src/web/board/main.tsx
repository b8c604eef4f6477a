/** The script of the board's pages. */
import '../shared/paper.css';
import '../shared/public-frame.css';
import '../shared/pattern-drawing.css';
import './board.css';
import './class/class.css';
import './screen/screen.css';
import './on-paper.css';
import { startPublicPage } from '../shared/start-public-page.tsx';
import { boardPages } from './pages.tsx';

void startPublicPage(boardPages);
