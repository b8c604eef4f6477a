/** What is in the way of a signature, each with a jump to where it is put right. */
import { Link } from 'wouter-preact';
import { cardFaultSentence, openTieOnCard } from '../../../engine/sentences/fault-sentences.ts';
import type { CardFault } from '../../../engine/sheets/card-types.ts';
import type { DayClass } from '../desk/day-types.ts';
import type { SignCheck } from '../desk/desk-types.ts';
import { isRail } from '../entries.ts';
import { namesIn } from '../outcome-words.ts';
import { useParts } from '../parts.tsx';

interface MissingProps {
  readonly dayClass: DayClass;
  readonly check: Pick<SignCheck, 'missing' | 'faults' | 'openTies' | 'tiesMustBeBroken' | 'conflicts'>;
  /** Said where nothing is in the way. */
  readonly nothing: string;
}

export function Missing({ dayClass, check, nothing }: MissingProps) {
  const { t, speech } = useParts();
  const to = `/classes/${dayClass.classId}`;
  const order = isRail(dayClass) ? `${to}/places` : `${to}/compare`;
  const names = namesIn({ speech, dayClass });
  const faults = [...check.faults, ...check.missing];
  const where = ({ entry }: CardFault) =>
    entry === undefined || isRail(dayClass) ? order : `${to}/goes/${entry}`;
  const isClear = faults.length + check.openTies.length + check.conflicts === 0;
  return (
    <section class="missing" aria-labelledby="missing">
      <h2 id="missing">{isClear ? nothing : t('judge-missing')}</h2>
      {isClear ? null : (
        <ul>
          {check.conflicts === 0 ? null : (
            <li>
              <Link href="/differences">{t('judge-notice-conflicts', { count: check.conflicts })}</Link>
            </li>
          )}
          {faults.map((fault) => (
            <li key={fault.at + fault.code}>
              <Link href={where(fault)}>{cardFaultSentence(fault, { speech, names })}</Link>
            </li>
          ))}
          {check.openTies.map((tie) => (
            <li key={tie.join()}>
              <Link href={order}>{openTieOnCard(tie, { speech, names })}</Link>
              {check.tiesMustBeBroken ? null : <span class="note"> {t('judge-tie-flagged')}</span>}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
