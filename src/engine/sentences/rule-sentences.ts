/** What is wrong with a placing rule, in words for the office. */
import type { RuleFault } from '../placing/check-rule.ts';

const sentences: Readonly<Record<RuleFault['code'], string>> = {
  needs_scores:
    'This method adds scores, and the sheet of the class gives none: choose a method that merges places.',
  needs_maneuvers:
    'This tie-break compares marks of maneuvers: name them in order, on a sheet that marks maneuvers.',
  needs_form: 'This tie-break compares form or collective marks, and the sheet of the class has none.',
  needs_penalties: 'This tie-break compares penalties, and the sheet of the class has none.',
  needs_discard: 'This tie-break brings discarded scores back, and the method discards none.',
  needs_seed: 'A draw needs the seed that was announced.',
  needs_judges: 'This tie-break asks the tie judges: name their order on the panel.',
  needs_referee: 'Two judges and a referee need exactly two judges and one referee on the panel.',
  judge_not_on_panel: 'A tie judge is named who does not sit on this panel.',
  missing_time_is_no_zero:
    'A missing time may not count as zero, the best time there is: say that the entry may not be placed.',
  not_a_decimal: 'A decimal is needed here, such as "10" or "0.5".',
  after_share: 'Nothing can follow "share": the place is shared and that is final.',
  maneuver_unknown: 'The pattern has no such maneuver; they count from 1.',
};

export const ruleFaultSentence = ({ code }: RuleFault): string => sentences[code];
