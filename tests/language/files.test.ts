/** Every language says all that English says, with the same things put in. */
import { FluentBundle, FluentResource } from '@fluent/bundle';
import { describe, expect, test } from 'vitest';
import { makeSpeech } from '../../src/engine/sentences/speech.ts';
import { filesIn, languagesIn, type Message, messagesIn, textOf, wordFolders } from './message-files.ts';

const first = 'en';
const pairs = wordFolders.flatMap((folder) => languagesIn(folder).map((language) => ({ folder, language })));

test('the pages and the sentences speak the same languages', () => {
  const [sentences, pages] = wordFolders.map(languagesIn);
  expect(sentences).toEqual(pages);
});

describe.each(pairs)('$folder in "$language"', ({ folder, language }) => {
  test('has the files of English', () => {
    expect(filesIn(folder, language)).toEqual(filesIn(folder, first));
  });

  test.each(filesIn(folder, first))('%s has the messages of English and puts the same things in', (file) => {
    const said = messagesIn(textOf(folder, language, file));
    const wanted = messagesIn(textOf(folder, first, file));
    expect(said.map(asTold(said)).sort()).toEqual(wanted.map(asTold(wanted)).sort());
  });

  test.each(filesIn(folder, language))('%s has nothing that Fluent passed over as unreadable', (file) => {
    const text = textOf(folder, language, file);
    const written = [...text.matchAll(/^([A-Za-z][\w-]*) *=/gm)].map(([, id]) => id);
    expect(messagesIn(text).map(({ id }) => id)).toEqual(written);
    expect(new Set(written).size).toBe(written.length);
  });
});

/** `rule-total (discard, noScore) .label`: with what the messages that it is made of put in as well. */
const asTold =
  (all: readonly Message[]) =>
  (message: Message): string => {
    const variables = [...new Set(variablesOf(message, all))].sort();
    return `${message.id} (${variables.join(', ')}) ${message.attributes.join(' ')}`;
  };

const variablesOf = (message: Message, all: readonly Message[]): string[] => [
  ...message.variables,
  ...message.refers.flatMap((id) =>
    all.filter((one) => one.id === id).flatMap((one) => variablesOf(one, all)),
  ),
];

describe.each(languagesIn(wordFolders[0]))('each sentence in "%s"', (language) => {
  const texts = filesIn(wordFolders[0], language).map((file) => textOf(wordFolders[0], language, file));
  const speech = makeSpeech(language, texts);

  test.each([0, 1, 2, 3, 11, 101])('can be said of %d', (count) => {
    for (const message of texts.flatMap(messagesIn)) {
      const all = texts.flatMap(messagesIn);
      const given = Object.fromEntries(variablesOf(message, all).map((name) => [name, count]));
      expect(speech.say(message.id, given)).not.toMatch(/[{}]|NaN|undefined/);
    }
  });
});

describe.each(languagesIn(wordFolders[1]))('each word of the pages in "%s"', (language) => {
  const texts = filesIn(wordFolders[1], language).map((file) => textOf(wordFolders[1], language, file));

  test('can be said, and stands in one file only', () => {
    const bundle = new FluentBundle(language, { useIsolating: false });
    for (const text of texts) expect(bundle.addResource(new FluentResource(text))).toEqual([]);
    const all = texts.flatMap(messagesIn);
    for (const message of all) {
      const { value, attributes } = bundle.getMessage(message.id) ?? { value: null, attributes: {} };
      const given = Object.fromEntries(variablesOf(message, all).map((name) => [name, 2]));
      for (const pattern of [value, ...Object.values(attributes)]) {
        const errors: Error[] = [];
        if (pattern !== null) expect(bundle.formatPattern(pattern, given, errors)).not.toBe('');
        expect([message.id, errors]).toEqual([message.id, []]);
      }
    }
  });
});
