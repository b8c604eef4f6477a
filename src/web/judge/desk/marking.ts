/** Which classes are open for marking, in this tab and in the others. */
import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { Message, Tabs } from './tabs.ts';

export class Marking {
  readonly #byTab = signal<ReadonlyMap<string, string>>(new Map());
  readonly #tabs: Tabs;

  constructor(tabs: Tabs) {
    this.#tabs = tabs;
  }

  readonly any: ReadonlySignal<boolean> = computed(() => this.#byTab.value.size > 0);

  classes(): readonly string[] {
    return [...new Set(this.#byTab.peek().values())];
  }

  /** In this tab. */
  set(classId: string | null): void {
    const { tab } = this.#tabs;
    this.hear({ kind: 'marking', tab, classId });
    this.#tabs.tell({ kind: 'marking', tab, classId });
  }

  hear({ tab, classId }: Extract<Message, { readonly kind: 'marking' }>): void {
    const byTab = new Map(this.#byTab.peek());
    if (classId === null) byTab.delete(tab);
    else byTab.set(tab, classId);
    this.#byTab.value = byTab;
  }
}
