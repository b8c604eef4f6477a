/** Where a card, a go, the phone is, in words. */
import { problemInWords } from '../shared/problem-words.ts';
import { dayAt, timeAt } from '../shared/show-times.ts';
import type { Words } from '../shared/words.tsx';
import type { CardState, ServiceProblem, SignalState, WrittenState } from './desk/desk-types.ts';

interface Told {
  readonly words: Words;
  readonly timeZone: string;
}

/** "4:05 pm", in the show's zone. */
export const timeOf = (instant: string, { words: { language }, timeZone }: Told): string =>
  timeAt(instant, { language, timeZone });

/** "Saturday, October 31", in the show's zone. */
export const dayOf = (instant: string, { words: { language }, timeZone }: Told): string =>
  dayAt(instant, { language, timeZone });

export function cardStateWords(state: CardState, told: Told): string {
  const { t } = told.words;
  switch (state.is) {
    case 'only-on-this-phone':
    case 'on-its-way':
      return t(`judge-card-${state.is}`, { unsent: state.unsent });
    case 'conflict':
      return t('judge-card-conflict', { count: state.count });
    case 'refused':
      return t('judge-card-refused', { why: whyNot(state.problem, told.words) });
    case 'signature-refused':
      return t('judge-card-signature-refused', { why: whyNot(state.problem, told.words) });
    case 'signed-on-this-phone':
      return t(
        state.signature.heldByConflicts ? 'judge-card-signed-held' : 'judge-card-signed-on-this-phone',
        { time: timeOf(state.signature.signedAt, told) },
      );
    case 'signed-and-received':
      return t('judge-card-signed-and-received', {
        revision: state.revision,
        time: timeOf(state.receivedAt, told),
      });
    case 'blank':
    case 'at-the-service':
      return t(`judge-card-${state.is}`);
  }
}

/** What the service refused, as a part of a sentence. */
const whyNot = (problem: ServiceProblem, words: Words): string =>
  problemInWords(problem, words).what.replace(/\.$/, '');

export const writtenStateWords = (state: WrittenState, words: Words): string =>
  state.is === 'refused'
    ? words.t('judge-written-refused', { why: whyNot(state.problem, words) })
    : words.t(`judge-written-${state.is}`);

export function signalWords(signal: SignalState, told: Told): string {
  const { t } = told.words;
  const { is, unsent, lastHeardAt } = signal;
  if (is === 'asking') return t('judge-signal-asking');
  if (is === 'no-answer') return t('judge-signal-none', { unsent });
  if (unsent > 0) return t('judge-signal-sending', { unsent });
  return t('judge-signal-heard', { time: lastHeardAt === null ? '' : timeOf(lastHeardAt, told) });
}
