/** The script of a family's pages. */
import '../shared/paper.css';
import '../shared/public-frame.css';
import '../shared/pattern-drawing.css';
import './exhibitor.css';
import './marks.css';
import { startPublicPage } from '../shared/start-public-page.tsx';
import { exhibitorPages } from './pages.tsx';

void startPublicPage(exhibitorPages);
