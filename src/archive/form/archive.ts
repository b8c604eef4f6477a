/** The archive of a show: one JSON document with all that is evidence, and all that is needed to read it. */
import { z } from 'zod';
import * as evidence from './evidence-records.ts';
import * as program from './show-records.ts';
import { id, instant, jws, sha256 } from './spellings.ts';

export const archiveForm = 'ringledger show archive 1';

/** Without the service's signature over it. */
const unsigned = {
  form: z.literal(archiveForm),
  names: z
    .enum(['full', 'none'])
    .describe('none: names, days of birth and remarks about people are left out.'),
  exportedAt: instant,
  head: z
    .strictObject({ sequence: z.int().min(1), hash: sha256 })
    .describe("The last line of the show's ledger when it was exported."),
  show: program.show,
  rings: z.array(program.ring),
  people: z.array(program.person),
  sheets: z.array(program.sheet),
  patterns: z.array(program.pattern),
  maneuvers: z.array(program.maneuver),
  classes: z.array(program.showClass),
  seats: z.array(program.seat),
  exhibitors: z.array(program.exhibitor),
  horses: z.array(program.horse),
  owners: z.array(program.owner),
  entries: z.array(program.entry),
  classEntries: z.array(program.classEntry),
  relations: z.array(program.relation),
  draws: z.array(program.draw),
  consents: z.array(program.consent),
  phones: z.array(evidence.phone),
  cards: z.array(evidence.card),
  paperCards: z.array(evidence.paperCard),
  paperEntries: z.array(evidence.paperEntry),
  paperPhotos: z.array(evidence.paperPhoto),
  revisions: z.array(evidence.revision),
  rulings: z.array(evidence.ruling),
  postings: z.array(evidence.posting),
  lines: z.array(evidence.line).min(1),
  keys: z.array(evidence.signingKey).min(1).describe('Public keys of the service.'),
};

export const unsignedArchive = z.strictObject(unsigned);
export type UnsignedArchive = z.infer<typeof unsignedArchive>;

export const archive = z.strictObject({ ...unsigned, jws }).meta({ id: 'ShowArchive' });
export type Archive = z.infer<typeof archive>;

export const signedArchiveForm = 'ringledger signed archive 1';

/** What the service signs (RFC 8785, typ `ringledger-archive+jws`): the fingerprint of all but the signature. */
export const signedArchive = z.strictObject({
  form: z.literal(signedArchiveForm),
  showId: id,
  names: z.enum(['full', 'none']),
  exportedAt: instant,
  archiveHash: sha256,
  head: z.strictObject({ sequence: z.int().min(1), hash: sha256 }),
});
export type SignedArchive = z.infer<typeof signedArchive>;
