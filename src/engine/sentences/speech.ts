/**
 * A language that the sentences are told in: its messages (Fluent, https://projectfluent.org) and how it writes numbers
 * and lists. The text of the files comes from outside, since the engine reads none: `words/<language>/*.ftl`.
 */
import { FluentBundle, FluentNumber, FluentResource, type FluentValue } from '@fluent/bundle';

/** Whole numbers that count something, and texts; a mark or a score is a text by `decimal`, and stays exact. */
export type SpeechArguments = Readonly<Record<string, string | number | FluentNumber>>;

export interface Speech {
  /** The language's tag (BCP 47), which is the name of its folder: `de`. */
  readonly language: string;
  /** The message of that id. Throws for one that is not there, or that needs what it was not given. */
  readonly say: (id: string, given?: SpeechArguments) => string;
  /** `undefined` where no file has it: for what comes from a show, such as the names of its penalties. */
  readonly find: (id: string, given?: SpeechArguments) => string | undefined;
}

/**
 * `texts`: what stands in the language's files, or in those of them that are needed, `numbers.ftl` always.
 * Throws where two of them have the same message.
 */
export function makeSpeech(language: string, texts: readonly string[]): Speech {
  const say = (id: string, given?: SpeechArguments): string => {
    const said = find(id, given);
    if (said === undefined) throw new Error(`the words of "${language}" have no message "${id}"`);
    return said;
  };
  const find = (id: string, given: SpeechArguments = {}): string | undefined => {
    const pattern = bundle.getMessage(id)?.value;
    return pattern === undefined || pattern === null
      ? undefined
      : bundle.formatPattern(pattern, wrapped(given));
  };
  // No marks of direction around what is put in: sentences are copied into mails and spreadsheets, where they would
  // stay as signs that nobody sees, and no language so far runs from right to left.
  const bundle = new FluentBundle(language, { useIsolating: false, functions: functionsOf(say, language) });
  for (const text of texts) {
    const [error] = bundle.addResource(new FluentResource(text));
    if (error !== undefined) throw error;
  }
  return { language, say, find };
}

const counting = { type: 'cardinal', useGrouping: false };
const ordering = { type: 'ordinal', useGrouping: false };

/** A number that tells an order: it chooses among the forms of `1st, 2nd, 3rd, 4th` and not among those of `1 place, 2 places`. */
export const inOrder = (value: number) => new FluentNumber(value, ordering);

/** Numbers count judges and places: they choose the plural, and are never grouped by thousands. */
function wrapped(given: SpeechArguments): Record<string, string | FluentNumber> {
  const args: Record<string, string | FluentNumber> = {};
  for (const [name, value] of Object.entries(given)) {
    args[name] = typeof value === 'number' ? new FluentNumber(value, counting) : value;
  }
  return args;
}

/**
 * What a message may call: `COUNT(2)` two, `ORDINAL(2)` second, `CAPITAL("judge 2")` Judge 2. The words themselves
 * are messages too (`count`, `ordinal`), so that a language brings its own.
 */
function functionsOf(say: Speech['say'], language: string) {
  const whole = (value: FluentValue | undefined) => Number(value?.valueOf());
  return {
    COUNT: ([value]: FluentValue[]) => say('count', { n: whole(value) }),
    ORDINAL: ([value]: FluentValue[]) => say('ordinal', { n: inOrder(whole(value)) }),
    CAPITAL: ([value]: FluentValue[]) => capital(String(value?.valueOf() ?? ''), language),
  };
}

const capital = (text: string, language: string): string =>
  text.charAt(0).toLocaleUpperCase(language) + text.slice(1);
