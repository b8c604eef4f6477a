/** How close a posted placing was, and how far its judges agree: for the office, once the class is posted. */
import { agreement } from '../engine/agreement/agreement.ts';
import { agreementRecord } from '../engine/agreement/agreement-record.ts';
import { type MarginSetting, margins, usualMarginSetting } from '../engine/agreement/margins.ts';
import type { PanelCard } from '../engine/placing/types.ts';
import { agreementSentences, marginSentence } from '../engine/sentences/agreement-sentences.ts';
import type { Speech } from '../engine/sentences/speech.ts';
import type { ScoreSheet } from '../engine/sheets/types.ts';
import { judgeAnswer, whoIsWho } from './answers.ts';
import { type ClassRecords, loadClassRecords, type Reader } from './class-records.ts';
import { goesByJudge } from './goes-by-judge.ts';
import { postedCards } from './posted-cards.ts';
import { type PostingBody, placingInput } from './posting-body.ts';
import { mustBePosted } from './read-result.ts';
import { tellerOf } from './spoken-names.ts';

interface Posted {
  readonly records: ClassRecords;
  readonly body: PostingBody;
  readonly cards: readonly PanelCard[];
}

/** For each two neighbours the smallest change on one card that would have swapped them; first places first. */
export async function readMargins(
  reader: Reader,
  { classId, upTo, speech }: { readonly classId: string; readonly upTo: number; readonly speech: Speech },
) {
  const { records, body, cards } = await loadPosted(reader, classId);
  const setting = { ...marginSetting(records.ofClass.sheet.definition), upTo };
  const { rule, decisions } = body;
  const panels = rule.merge.method === 'separate' ? cards.map((card) => [card]) : [cards];
  const { backNumber } = whoIsWho(records, body);
  const teller = tellerOf(records, speech);
  return {
    margins: panels.flatMap((panel) =>
      margins(placingInput(body, { cards: panel, rule, decisions }), setting).map((margin) => ({
        judge: panels.length > 1 ? judgeAnswer(records, panel[0]?.judge ?? null) : null,
        place: margin.place,
        ahead: backNumber(margin.ahead),
        behind: backNumber(margin.behind),
        change: margin.change,
        sentence: marginSentence(margin, teller),
      })),
    ),
  };
}

export async function readAgreement(reader: Reader, classId: string, speech: Speech) {
  const { records, body, cards } = await loadPosted(reader, classId);
  const went = records.entries.flatMap(({ goPosition, classEntryId }) =>
    goPosition === null ? [] : [classEntryId],
  );
  const found = agreement(cards, went);
  const sentences = agreementSentences(found, tellerOf(records, speech));
  const judges = goesByJudge(records, { body, cards, orderOfGo: went });
  return { agreement: agreementRecord(found), sentences, judges };
}

async function loadPosted(reader: Reader, classId: string): Promise<Posted> {
  const records = await loadClassRecords(reader, classId);
  const { body } = mustBePosted(records);
  const cards = await postedCards(reader, records, body);
  return { records, body, cards: cards.map(({ onPanel }) => onPanel) };
}

/** A score changes by the step of its marks and stays where the sheet lets a total be. */
function marginSetting(sheet: ScoreSheet): MarginSetting {
  switch (sheet.kind) {
    case 'pattern':
      return { ...usualMarginSetting, step: sheet.maneuver.step, range: sheet.totalRange };
    case 'one-mark':
      return { ...usualMarginSetting, step: sheet.mark.step, range: sheet.mark };
    case 'measured':
      return { ...usualMarginSetting, step: sheet.measure.step };
    case 'percentage':
    case 'places':
      return usualMarginSetting;
  }
}
