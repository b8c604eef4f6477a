/** The page of the gate and the announcer: its desk is opened once. */
import '../shared/paper.css';
import './gate.css';
import './gate-sheet.css';
import './announce.css';
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { keepNewest } from '../shared/keep-pages.ts';
import { startPage } from '../shared/start-page.tsx';
import { type OpenedGate, openGate } from './desk/open-gate.ts';
import { GatePage } from './gate-page.tsx';
import { NobodyHere } from './screens/nobody-here.tsx';
import { DeskContext } from './use-desk.ts';

const opening: Promise<OpenedGate> = openGate();

/** Who has no key here needs no page without a network. */
void opening.then((gate) => (typeof gate === 'string' ? undefined : keepNewest('/gate')));

function Page({ onLanguage }: { readonly onLanguage: () => void }) {
  const opened = useSignal<OpenedGate | undefined>(undefined);
  useEffect(() => {
    void opening.then((gate) => {
      opened.value = gate;
    });
  }, [opened]);
  const gate = opened.value;
  if (gate === undefined) return null;
  if (typeof gate === 'string') return <NobodyHere is={gate} onLanguage={onLanguage} />;
  return (
    <DeskContext.Provider value={gate}>
      <GatePage onLanguage={onLanguage} />
    </DeskContext.Provider>
  );
}

void startPage({ topics: ['shared', 'problems', 'gate'], Page });
