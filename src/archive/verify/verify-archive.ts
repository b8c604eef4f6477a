/** Checks a whole archive: without a database, without a clock, without the service that made it. */
import type { JWK } from 'jose';
import type { Archive } from '../form/archive.ts';
import { checkCards } from './check-cards.ts';
import { checkEntries } from './check-entries.ts';
import { checkForm } from './check-form.ts';
import { checkLedger, type HeadWrittenDown } from './check-ledger.ts';
import { checkPaper } from './check-paper.ts';
import { checkPhones } from './check-phones.ts';
import { checkPostings } from './check-postings.ts';
import { checkProgram } from './check-program.ts';
import { checkRecords } from './check-records.ts';
import { checkRulings } from './check-rulings.ts';
import { checkSheets } from './check-sheets.ts';
import { checkSignature } from './check-signature.ts';
import type { Fault } from './fault.ts';
import { knownKeys } from './known-keys.ts';
import { openForReading } from './reading.ts';

export interface Asked {
  /** The service's public keys, from outside; left out: the keys of the archive itself are believed. */
  readonly trustedKeys?: readonly JWK[] | undefined;
  /** A line that somebody wrote down, e.g. the head on a printed result. */
  readonly head?: HeadWrittenDown | undefined;
}

export interface Verified {
  /** In the order of the checks, and within each of the records; empty: nothing was found. */
  readonly faults: readonly Fault[];
  /** `undefined`: it has not the form of an archive, and nothing more could be checked. */
  readonly archive: Archive | undefined;
}

export async function verifyArchive(value: unknown, { trustedKeys, head }: Asked = {}): Promise<Verified> {
  const read = checkForm(value);
  if (!read.ok) return { faults: read.faults, archive: undefined };
  const { archive } = read;
  const { keys, faults } = await knownKeys(archive, trustedKeys);
  const reading = openForReading(archive, keys);
  const found = [
    faults,
    await checkSignature(reading),
    await checkLedger(reading, head),
    checkRecords(reading),
    checkProgram(reading),
    checkEntries(reading),
    checkSheets(reading),
    await checkPhones(reading),
    await checkCards(reading),
    checkPaper(reading),
    checkRulings(reading),
    await checkPostings(reading),
  ];
  return { faults: found.flat(), archive };
}
