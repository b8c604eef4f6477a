import { startPage } from '../shared/start-page.tsx';
import { OfficePage } from './office-page.tsx';
import { topics } from './screens.tsx';

void startPage({ topics, Page: OfficePage });
