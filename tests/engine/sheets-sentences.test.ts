import { describe, expect, it } from 'vitest';
import { cardFaultSentence, goFaultSentence } from '../../src/engine/sentences/fault-sentences.ts';
import { scoreSentences } from '../../src/engine/sentences/score-sentences.ts';
import { sheetFaultSentence } from '../../src/engine/sentences/sheet-fault-sentences.ts';
import { plainTeller, type Teller } from '../../src/engine/sentences/words.ts';
import type { CardFault } from '../../src/engine/sheets/card-types.ts';
import { checkCard } from '../../src/engine/sheets/check-card.ts';
import { checkSheet } from '../../src/engine/sheets/check-sheet.ts';
import { scoreGo } from '../../src/engine/sheets/score-go.ts';
import type { Go, JudgeScore, ScoreSheet } from '../../src/engine/sheets/types.ts';
import { english } from '../../src/language/index.ts';
import { maneuvers, marked, oneMark, pattern, percentage, places, scored, timed } from './sheets-examples.ts';

const plain = plainTeller(english);

const said = (sheet: ScoreSheet, count: number, go: Go): string[] => {
  const result = scoreGo(sheet, maneuvers(count), go);
  return result.ok ? [] : result.faults.map((fault) => goFaultSentence(fault, plain));
};

describe('a fault in words', () => {
  it('says what was written, where, and what to write', () => {
    expect(said(pattern, 2, { maneuvers: marked('0.25', '3.5'), extras: { form: '½' } })).toEqual([
      'maneuver 1: "0.25" is between two steps; write −3 to 3 by 0.5',
      'maneuver 2: "3.5" is outside the range; write −3 to 3 by 0.5',
      '"½" is no mark; write a plain decimal, 0 to 5 by 0.5',
    ]);
  });

  it('says what is missing', () => {
    expect(said(pattern, 1, {})).toEqual([
      'maneuver 1: no mark yet; write −3 to 3 by 0.5, or say that it was not seen',
      'form has no mark yet; write 0 to 5 by 0.5',
    ]);
    expect(said(oneMark, 0, {})).toEqual(['no mark yet; write 0 to 100 by 0.5']);
    expect(said(timed, 0, {})).toEqual(['no time yet; write seconds, 0.001 to 999.999 by 0.001']);
  });

  it('asks for the ruling that an unseen maneuver needs', () => {
    const go: Go = { maneuvers: marked(null), extras: { form: '0' } };
    expect(said({ ...pattern, notSeen: 'absent' }, 1, go)).toEqual([
      'maneuver 1: it was not seen and counts as not shown, so the judge must rule on the pattern; write one of off-pattern, disqualified, excused, retired',
    ]);
  });

  it('names what the sheet knows', () => {
    const go: Go = {
      mark: '80',
      penalties: [{ code: 'minor' }],
      ruling: { code: 'no-show' },
      maneuvers: marked('1'),
    };
    expect(said(oneMark, 1, go)).toEqual([
      'the sheet of this class has no marks for maneuvers; take it out',
      'the sheet has no penalty "minor"; it has major',
      'the ruling "no-show" may not be given on this sheet; it has disqualified',
    ]);
  });

  it('of a card names the entry by its back number', () => {
    const entry = (id: string) => ({ a: '214', s: '118' })[id] ?? id;
    const teller: Teller = { speech: english, names: { ...plain.names, entry } };
    const result = checkCard({
      sheet: pattern,
      maneuvers: maneuvers(1),
      entries: [
        { id: 'a', going: true },
        { id: 's', going: false },
      ],
      content: { goes: { a: { maneuvers: marked('4'), extras: { form: '0' } }, s: {} } },
    });
    expect(result.ok ? [] : result.faults.map((fault) => cardFaultSentence(fault, teller))).toEqual([
      '214, maneuver 1: "4" is outside the range; write −3 to 3 by 0.5',
      '118 does not go in this class; take it off the card',
    ]);
  });

  it('of the order of a tie names the whole tie', () => {
    const go: Go = { maneuvers: marked('1'), extras: { form: '0' } };
    const entries = ['a', 'b', 'c'].map((id) => ({ id, going: true }));
    const content = { goes: { a: go, b: go, c: go }, ownOrder: [['a', 'b']] };
    const result = checkCard({ sheet: pattern, maneuvers: maneuvers(1), entries, content });
    const faults: readonly CardFault[] = result.ok ? [] : result.faults;
    expect(faults.map((fault) => cardFaultSentence(fault, plain))).toEqual([
      'a, b: order the whole tie and nothing else: a, b, c',
    ]);
  });

  it('of a sheet says what does not fit', () => {
    const sheet = { ...pattern, maneuver: { low: '-3', high: '3', step: '0.7' }, lowest: '80' };
    expect(checkSheet(sheet).map((fault) => sheetFaultSentence(fault, english))).toEqual([
      '"3" is never reached by whole steps from the low end',
      'the lower limit "80" is above the base',
    ]);
  });
});

describe("one judge's score in words", () => {
  const names = { maneuver: (position: number) => `maneuver ${position} (lope to C)` };
  const told = (score: JudgeScore, sheet: ScoreSheet) => scoreSentences(score, { ...plain, sheet });

  it('can be added up again part by part', () => {
    const go: Go = {
      maneuvers: marked('0.5', '-1', null),
      extras: { form: '3' },
      penalties: [{ code: 'minor', position: 2 }, { code: 'severe' }],
      ruling: { code: 'off-pattern' },
    };
    expect(
      scoreSentences(scored(pattern, maneuvers(3, ['1', '2', '1']), go), {
        speech: english,
        names,
        sheet: pattern,
      }),
    ).toEqual([
      'Base 70.',
      'Maneuver 1 (lope to C): +0.5.',
      'Maneuver 2 (lope to C): −1, counts −2.',
      'Maneuver 3 (lope to C): not seen; left out, neither a zero nor a fault.',
      'Form: +3.',
      'Break of gait, maneuver 2 (lope to C): −3.',
      'Lost rein: −10.',
      'Ruled off pattern: placed below all who kept the pattern.',
      'Total 58.5.',
    ]);
  });

  it('says when the lower limit was met, and when there is no score', () => {
    const low = {
      maneuvers: marked('0'),
      extras: { form: '0' },
      penalties: Array.from({ length: 8 }, () => ({ code: 'severe' })),
    };
    expect(told(scored(pattern, maneuvers(1), low), pattern).slice(-2)).toEqual([
      'The parts add up to −10, which counts as the lowest score of the sheet.',
      'Total 0.',
    ]);
    const out = scored(pattern, maneuvers(1), { ruling: { code: 'disqualified' } });
    expect(told(out, pattern)).toEqual(['Base 70.', 'Ruled disqualified: may not be placed.', 'No score.']);
  });

  it('says a percentage with its highest possible, a time with its seconds, and a rank with nothing', () => {
    const test = scored(percentage, maneuvers(1), {
      maneuvers: marked('7'),
      extras: { gaits: '6' },
      errorsOfCourse: 1,
    });
    expect(told(test, percentage)).toEqual([
      'Maneuver 1: 7.',
      'Gaits: 6, counts 12.',
      'Errors of course: −2.',
      'Total 56.667 percent of 30 points.',
    ]);
    const time = scored(timed, [], { measure: '17.482', penalties: [{ code: 'knock' }] });
    expect(told(time, timed)).toEqual([
      'Time 17.482 seconds.',
      'Barrel down: +5 seconds.',
      'Total 22.482 seconds.',
    ]);
    expect(told(scored(places, [], {}), places)).toEqual(['Ranked, not scored.']);
  });
});
