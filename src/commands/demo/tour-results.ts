/** Stops of the tour: classes, results, and why each entry stands where it does. */
import { ask, by, sending, type TourStop } from './tour-commands.ts';
import { type Places, underWay } from './tour-places.ts';

export function resultStops(places: Places): TourStop[] {
  const { show, ofClass, inShow } = places;
  return [
    { what: 'The board: every class, in every state', commands: [`${show}/board`] },
    corrected(places),
    {
      what: 'Class 2: 157 and 176 are tied by majority, broken by its size; 182 was off pattern and stands below all',
      commands: [
        `${ofClass(2)}/result`,
        `${ofClass(2)}/result.csv`,
        `${ofClass(2)}/result/entries/157`,
        `${ofClass(2)}/result/entries/182`,
      ],
    },
    {
      what: 'Class 3: high and low discarded; judge 4 could not see a maneuver of 213',
      commands: [`${ofClass(3)}/result/entries/213`],
    },
    {
      what: 'Class 4: a scratch, a no-show, and a young rider off pattern who still has sixth place',
      commands: [`${ofClass(4)}/result/entries/112`],
    },
    { what: 'Class 5: a place that is shared', commands: [`${ofClass(5)}/result/entries/106`] },
    waitingTie(places),
    {
      what: 'How close class 3 was, and how far the five judges of class 6 agree (office only)',
      commands: [by('SECRETARY', `${ofClass(3)}/margins`), by('SECRETARY', `${ofClass(6)}/agreement`)],
    },
    ...underWayStops(places),
    {
      what: 'Class 14: the order of go with three horses of one rider, a late add, and the seed it was drawn from',
      commands: [`${inShow(14)}/order-of-go`, `${inShow(14)}/order-of-go/draws`],
    },
    { what: 'Class 15: class 16 was combined into it', commands: [`${inShow(15)}/relations`] },
    {
      what: 'Live: leave the first running, and let the gate call the class in another window',
      commands: [`curl -N ${show}/events`, ask('gate', 'POST', `${inShow(14)}/calls`)],
    },
  ];
}

function corrected({ v1, ofClass, firstPosting }: Places): TourStop {
  const first = firstPosting === undefined ? [] : [`${v1}/postings/${firstPosting}`];
  return {
    what: 'Class 1: official, then corrected: a judge had two goes under the wrong numbers. The old postings stay',
    commands: [`${ofClass(1)}/result`, `${ofClass(1)}/postings`, ...first],
  };
}

function waitingTie({ ofClass, openTie }: Places): TourStop {
  const preview = by('SECRETARY', `${ofClass(7)}/tabulation`);
  if (openTie === undefined) return { what: 'Class 7: its tie was ruled on', commands: [preview] };
  const ruling = {
    kind: 'run-off',
    order: openTie.classEntryIds.map((id) => [id]),
    decidedBy: 'Judges of the run-off',
    why: 'Run-off, three judges of five',
  };
  return {
    what: `Class 7: ${openTie.backNumbers.join(' and ')} are tied for first and wait for a run-off. See it, then record how it ended`,
    commands: [preview, by('SECRETARY', `${ofClass(7)}/rulings`, sending('POST', ruling))],
  };
}

function underWayStops({ v1, ofClass, cardOfJudge, nextGo }: Places): TourStop[] {
  const card = (seat: number) => `${v1}/cards/${cardOfJudge(seat)}`;
  return [
    {
      what: 'Class 13, under way: the office sees how far the cards are, never a mark; a judge sees her own card',
      commands: [by('SECRETARY', `${ofClass(underWay)}/cards`), ask('judge-1', 'GET', card(1))],
    },
    {
      what: 'The scribe of judge 2 enters a mark that the sheet does not allow, and one that it does',
      commands: ['81.25', '81.5'].map((mark) =>
        ask('scribe-2', 'PUT', `${card(2)}/goes/${nextGo}`, { mark }),
      ),
    },
  ];
}
