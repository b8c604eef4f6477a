/** What just happened, in words: seen at the foot of the screen for a while, and told by a screen reader. */
import { signal } from '@preact/signals';

const said = signal('');
let timer: ReturnType<typeof setTimeout> | undefined;
const seenMilliseconds = 8_000;

export function say(words: string): void {
  clearTimeout(timer);
  said.value = words;
  timer = setTimeout(() => {
    said.value = '';
  }, seenMilliseconds);
}

export const Said = () => (
  <p class="said" role="status">
    {said.value}
  </p>
);
