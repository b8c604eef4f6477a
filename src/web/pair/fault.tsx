/** What stands in the way, where a screen reader announces it. */
import { problemInWords } from '../shared/problem-words.ts';
import { useWords, type Words } from '../shared/words.tsx';
import type { InTheWay } from './pairing.ts';

/** On this page the one thing that can be in a wrong form is the code. */
export function inWords(because: InTheWay, words: Words) {
  const { t } = words;
  switch (because.code) {
    case 'code_not_whole':
      return { what: t('pair-code-not-whole'), whatToDo: t('pair-code-not-whole-do') };
    case 'invalid_request':
      return { what: t('pair-code-none'), whatToDo: t('pair-code-none-do') };
    default:
      return problemInWords({ title: because.code, whatToDo: '', ...because }, words);
  }
}

export function Fault({ id, because }: { readonly id?: string; readonly because: InTheWay | undefined }) {
  const words = useWords();
  const told = because && inWords(because, words);
  return (
    <div id={id} role="alert" class={told === undefined ? '' : 'fault'}>
      {told && (
        <>
          <strong>{told.what}</strong> {told.whatToDo}
        </>
      )}
    </div>
  );
}
