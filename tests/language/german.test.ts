/** What a family reads in German, word for word. */
import { describe, expect, test } from 'vitest';
import { exact } from '../../src/engine/numbers/exact.ts';
import { cardFromRanking } from '../../src/engine/placing/panel-card.ts';
import { placeClass } from '../../src/engine/placing/place-class.ts';
import type { PlacingInput } from '../../src/engine/placing/types.ts';
import { marginSentence } from '../../src/engine/sentences/agreement-sentences.ts';
import { goFaultSentence } from '../../src/engine/sentences/fault-sentences.ts';
import { because, noteSentence } from '../../src/engine/sentences/placing-sentences.ts';
import { ruleSentences } from '../../src/engine/sentences/rule-words.ts';
import { scoreSentences } from '../../src/engine/sentences/score-sentences.ts';
import { plainNames, type Teller } from '../../src/engine/sentences/words.ts';
import { scoreGo } from '../../src/engine/sheets/score-go.ts';
import { speechFor } from '../../src/language/index.ts';
import {
  classOf,
  majority,
  placesPanel,
  ranked,
  rankSum,
  scored as scoredPanel,
  total,
} from '../engine/panels.ts';
import { maneuvers, marked, pattern, scored } from '../engine/sheets-examples.ts';

const speech = speechFor('de');
const teller: Teller = {
  speech,
  names: {
    ...plainNames(speech),
    judge: (id) => speech.say('name-judge', { number: id.replace(/\D/g, '') }),
  },
};
const why = (input: PlacingInput, entry: string) => because(placeClass(input), entry, teller).join(' ');

describe('warum ein Starter steht, wo er steht', () => {
  test('eine Mehrheit, und was dem Nächsten fehlte', () => {
    const input = classOf(ranked('214 118 300', '118 214 300', '214 300 118'), majority);
    expect(why(input, '214')).toBe(
      'Platz 1: Zwei von drei Richtern hatten 214 auf Platz 1; 118 hatte nur einer.',
    );
    expect(why(classOf(ranked('A B', 'A', 'A'), majority), 'B')).toBe(
      'Platz 2: Einer von drei Richtern platzierte B, und eine Mehrheit braucht zwei.',
    );
  });

  test('Summen und Mittel mit Komma, auch solche, die nie enden', () => {
    const input = classOf(scoredPanel({ A: '70.5', B: '60' }, { A: '72', B: '60' }), total);
    expect(why(input, 'A')).toBe('Platz 1: 70,5 + 72 = 142,5.');
    const three = scoredPanel({ A: '70', B: '60' }, { A: '71', B: '60' }, { A: '73', B: '60' });
    const mean = { method: 'mean', discard: 'none', noScore: 'zero', round: null } as const;
    expect(why(classOf(three, mean), 'A')).toBe('Platz 1: Mittel aus 70, 71 und 73 = 71,333.');
    const phases = [
      cardFromRanking({ judge: '1', weight: exact('0.5') }, [['A'], ['B']]),
      cardFromRanking({ judge: '2' }, [['B'], ['A']]),
    ];
    expect(why(classOf(phases, rankSum), 'B')).toBe('Platz 1: Plätze 0,5 × 2 und 1 ergeben zusammen 2.');
  });

  test('ein Gleichstand, der gelöst wurde, und einer, der bleibt', () => {
    const input = classOf(placesPanel({ A: [2, 2, 9], B: [1, 2, 10] }), majority);
    expect(why(input, 'A')).toBe(
      'Platz 2: Zwei von drei Richtern hatten A auf Platz 2 oder besser. Gleichstand mit B; dahinter nach der Summe der Plätze 2 oder besser, die kleinste zuerst (A: 4, B: 3).',
    );
    const level = scoredPanel({ A: '71', B: '70' }, { A: '70', B: '71' });
    expect(
      why(
        classOf(level, total, { ties: [{ code: 'tie-judge', judges: ['judge 2'], alternate: false }] }),
        'B',
      ),
    ).toBe(
      'Platz 1: 70 + 71 = 141. Gleichstand mit A; davor nach dem Bogen von Richter 2, der bei Gleichstand entscheidet (B: Platz 1, A: Platz 2).',
    );
    expect(why(classOf(level, total, { ties: [{ code: 'run-off' }] }), 'A')).toBe(
      'Platz 1: 71 + 70 = 141. Gleichstand mit B: Ein Stechen entscheidet, sofern es nicht abgelehnt wird.',
    );
  });

  test('was ein Richter nicht sehen konnte', () => {
    const flag = { kind: 'not-seen', position: 2, treatedAs: 'left-out' } as const;
    expect(noteSentence({ entry: 'A', judge: '1', flag }, teller)).toBe(
      'Richter 1 konnte Manöver 2 nicht sehen; es zählt in dieser Wertung nicht mit, weder als Null noch als Fehler.',
    );
  });
});

test('die Regel einer Prüfung', () => {
  const { rule } = classOf([], majority, {
    ties: [{ code: 'tie-judge', judges: ['1', '2', '3'], alternate: true }, { code: 'share' }],
  });
  expect(ruleSentences({ ...rule, placesGiven: 6 }, teller)).toEqual([
    expect.stringMatching(
      /^Ein Starter bekommt den besten Platz, den ihm mehr als die Hälfte der Richter gibt/,
    ),
    'Bei Gleichstand entscheiden: der Bogen von Richter 1, Richter 2 und Richter 3, in dieser Reihenfolge, mit jeder Prüfung um einen weiter, dann nichts weiter: Der Platz wird geteilt.',
    'Es werden sechs Plätze vergeben.',
  ]);
});

test('eine Wertung Teil für Teil, die Abzüge des Vordrucks auf Deutsch', () => {
  const go = {
    maneuvers: marked('0.5', '-1', null),
    extras: { form: '3' },
    penalties: [{ code: 'minor', position: 2 }],
    ruling: { code: 'off-pattern' as const },
  };
  expect(
    scoreSentences(scored(pattern, maneuvers(3, ['1', '2', '1']), go), { ...teller, sheet: pattern }),
  ).toEqual([
    'Grundwert 70.',
    'Manöver 1: +0,5.',
    'Manöver 2: −1, zählt −2.',
    'Manöver 3: nicht gesehen; zählt nicht mit, weder als Null noch als Fehler.',
    'Form: +3.',
    'Gangartfehler, Manöver 2: −3.',
    'Entscheid: Pattern verlassen; hinter allen, die das Pattern eingehalten haben.',
    'Gesamt 68,5.',
  ]);
});

test('was an einem Ritt nicht stimmt', () => {
  const result = scoreGo(pattern, maneuvers(2), { maneuvers: marked('0.25', '3.5'), extras: { form: '0' } });
  expect(result.ok ? [] : result.faults.map((fault) => goFaultSentence(fault, teller))).toEqual([
    'Manöver 1: „0.25“ liegt zwischen zwei Schritten; möglich: −3 bis 3 in Schritten von 0,5',
    'Manöver 2: „3.5“ liegt außerhalb; möglich: −3 bis 3 in Schritten von 0,5',
  ]);
});

test('wie knapp es war', () => {
  const on = [{ judge: 'judge 2', entry: '118', direction: 'up' as const }];
  const change = { by: 'points' as const, size: '0.5', on };
  expect(marginSentence({ place: 1, ahead: '214', behind: '118', change }, teller)).toBe(
    'Ein Unterschied von einem halben Punkt auf dem Bogen von Richter 2 hätte 118 vor 214 gebracht.',
  );
});
