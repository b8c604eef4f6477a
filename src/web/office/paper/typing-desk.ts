/** The card under the hands of a typist: what she typed as signals, so that one key paints one go. */
import { computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import type { CardContent } from '../../../engine/sheets/card-types.ts';
import { forgetTyping, keepTyping, keptTyping } from './kept-typing.ts';
import {
  blankCard,
  type CardRead,
  type CardToType,
  cardOfTyped,
  type TypedCard,
  typedOfCard,
} from './typed-card.ts';
import type { TypedGo } from './typed-go.ts';

export interface TypingDesk {
  readonly card: CardToType;
  readonly typed: ReadonlySignal<TypedCard>;
  /** The whole card as it is read now. */
  readonly read: ReadonlySignal<CardRead>;
  /** The same signal for the same entry each time. */
  goOf(entry: string): ReadonlySignal<TypedGo>;
  write(entry: string, key: string, text: string): void;
  writePlace(index: number, text: string): void;
  /** Takes what is kept of hers at the service, over what was typed. */
  takeSaved(content: CardContent): void;
  /** Sent and kept there: this window needs it no more. */
  sent(): void;
  close(): void;
}

interface DeskSetting {
  readonly card: CardToType;
  readonly accountId: string;
  readonly paperCardId: string;
  /** What she entered before; `undefined`: nothing yet. */
  readonly saved: CardContent | undefined;
}

const keepAfterMilliseconds = 400;
const nothing: TypedGo = {};

export function openTypingDesk({ card, accountId, paperCardId, saved }: DeskSetting): TypingDesk {
  const typist = { accountId, paperCardId };
  const begun = saved === undefined ? blankCard : typedOfCard(card, saved);
  const typed = signal<TypedCard>(keptTyping(typist) ?? begun);
  const read = computed(() => cardOfTyped(card, typed.value));
  const goes = new Map(card.entries.map(({ id }) => [id, computed(() => typed.value.goes[id] ?? nothing)]));
  const none = computed(() => nothing);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let last = typed.value;
  const stop = effect(() => {
    const now = typed.value;
    clearTimeout(timer);
    if (now !== last) timer = setTimeout(() => keepTyping(typist, now), keepAfterMilliseconds);
    last = now;
  });
  return {
    ...{ card, typed, read },
    goOf: (entry) => goes.get(entry) ?? none,
    write: (entry, key, text) => {
      typed.value = withText(typed.value, { entry, key, text });
    },
    writePlace: (index, text) => {
      typed.value = withPlace(typed.value, index, text);
    },
    takeSaved: (content) => {
      typed.value = typedOfCard(card, content);
    },
    sent: () => {
      clearTimeout(timer);
      last = typed.value;
      forgetTyping(typist);
    },
    close: () => {
      stop();
      clearTimeout(timer);
      if (keptTyping(typist) !== undefined) keepTyping(typist, typed.value);
    },
  };
}

interface Written {
  readonly entry: string;
  readonly key: string;
  readonly text: string;
}

function withText({ goes, ranking }: TypedCard, { entry, key, text }: Written): TypedCard {
  const { [key]: _, ...rest } = goes[entry] ?? nothing;
  const go = text === '' ? rest : { ...rest, [key]: text };
  return { goes: { ...goes, [entry]: go }, ranking };
}

function withPlace({ goes, ranking }: TypedCard, index: number, text: string): TypedCard {
  const length = Math.max(ranking.length, index + 1);
  return {
    goes,
    ranking: Array.from({ length }, (_, at) => (at === index ? text : (ranking[at] ?? ''))),
  };
}
