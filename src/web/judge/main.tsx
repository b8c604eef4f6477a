/** The judge's page starts: her desk is opened once, and her language is loaded beside it. */
import '../shared/paper.css';
import '../shared/pattern-drawing.css';
import './judge.css';
import './go/go.css';
import './card.css';
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { startPage } from '../shared/start-page.tsx';
import { useWords } from '../shared/words.tsx';
import { Books } from './book/books.ts';
import { NotHere } from './day/not-here.tsx';
import { openDesk } from './desk/open-desk.ts';
import { JudgePage } from './judge-page.tsx';
import { type LanguageParts, loadLanguage } from './load-language.ts';
import { type Parts, PartsContext } from './parts.tsx';

type Opened = Pick<Parts, 'desk' | 'books'> | 'no-store';

const opening: Promise<Opened> = openDesk().then((desk) =>
  desk === undefined ? 'no-store' : { desk, books: new Books(desk) },
);

function Page({ onLanguage }: { readonly onLanguage: () => void }) {
  const { language } = useWords();
  const opened = useSignal<Opened | undefined>(undefined);
  const spoken = useSignal<LanguageParts | undefined>(undefined);
  useEffect(() => {
    void opening.then((parts) => {
      opened.value = parts;
    });
  }, [opened]);
  useEffect(() => {
    void loadLanguage(language).then((parts) => {
      spoken.value = parts;
    });
  }, [language, spoken]);
  if (opened.value === 'no-store') return <NotHere is="no-store" because={null} onLanguage={onLanguage} />;
  if (opened.value === undefined || spoken.value === undefined) return null;
  return (
    <PartsContext.Provider value={{ ...opened.value, ...spoken.value }}>
      <JudgePage onLanguage={onLanguage} />
    </PartsContext.Provider>
  );
}

void startPage({ topics: ['shared', 'judge', 'problems'], Page });
