import { startPage } from '../shared/start-page.tsx';
import { PairPage } from './pair-page.tsx';

void startPage({ topics: ['shared', 'pair', 'problems'], Page: PairPage });
