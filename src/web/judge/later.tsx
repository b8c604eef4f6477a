/** A part of the page that comes when it is first shown: the first load stays light. The service worker keeps them all. */
import { useSignal } from '@preact/signals';
import { type FunctionComponent, h } from 'preact';
import { useEffect } from 'preact/hooks';

export function later<Properties extends object>(
  load: () => Promise<FunctionComponent<Properties>>,
): FunctionComponent<Properties> {
  let loaded: FunctionComponent<Properties> | undefined;
  return function Later(properties: Properties) {
    const here = useSignal(loaded !== undefined);
    useEffect(() => {
      if (here.value) return;
      void load().then((part) => {
        loaded = part;
        here.value = true;
      });
    }, [here]);
    return here.value && loaded !== undefined ? h(loaded, properties) : null;
  };
}
