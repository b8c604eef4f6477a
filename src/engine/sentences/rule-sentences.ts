/** What is wrong with a placing rule, in words for the office. */
import type { RuleFault } from '../placing/check-rule.ts';
import type { Speech } from './speech.ts';

export const ruleFaultSentence = ({ code }: RuleFault, speech: Speech): string =>
  speech.say(`rule-fault-${code}`);
