/** One screen at a time; its heading is read aloud when it appears. */

export type Screen = 'opening' | 'no-key' | 'ask-code' | 'paired' | 'no-answer';

/** Throws where the page lacks what its script needs: the two are built together. */
export function element<Kind extends HTMLElement>(id: string, kind: new () => Kind): Kind {
  const found = document.getElementById(id);
  if (found instanceof kind) return found;
  throw new Error(`the page has no ${kind.name} called ${id}`);
}

/** The title of the window follows the heading, which is where a screen reader begins. */
export function show(screen: Screen): void {
  for (const section of document.querySelectorAll<HTMLElement>('[data-screen]')) {
    section.hidden = section.dataset.screen !== screen;
  }
  const heading = document.querySelector<HTMLElement>(`[data-screen="${screen}"] h1`);
  document.title = `${heading?.textContent ?? 'This phone'} · Ringledger`;
  heading?.focus({ preventScroll: true });
  window.scrollTo(0, 0);
}

/** What is going on, for whoever looks and for whoever listens; empty: nothing is. */
export function say(progress: string): void {
  element('progress', HTMLParagraphElement).textContent = progress;
}
