/** The engine's own sentences about what a card is still missing, in the language of the page. */
import { useEffect, useState } from 'preact/hooks';
import { makeSpeech, type Speech } from '../../../engine/sentences/speech.ts';
import { useWords } from '../../shared/words.tsx';

const files = import.meta.glob<string>('../../../engine/sentences/words/*/{numbers,faults,scores}.ftl', {
  query: '?raw',
  import: 'default',
});

/** `undefined` until its files are there. */
export function useSpeech(): Speech | undefined {
  const { language } = useWords();
  const [speech, setSpeech] = useState<Speech | undefined>(undefined);
  useEffect(() => {
    const texts = Object.entries(files)
      .filter(([path]) => path.includes(`/words/${language}/`))
      .map(([, load]) => load());
    void Promise.all(texts).then((found) => setSpeech(makeSpeech(language, found)));
  }, [language]);
  return speech?.language === language ? speech : undefined;
}
