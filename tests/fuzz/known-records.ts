/** The ids that the run knows: of the prepared show, and of what its own requests have made. */

/** Of one kind at most so many from answers; those of the prepared show are kept beside them. */
const mostFromAnswers = 30;

/** Last segment of a collection's address -> how its ids are called elsewhere. */
const collections: Readonly<Record<string, string>> = {
  shows: 'showId',
  classes: 'classId',
  cards: 'cardId',
  'paper-cards': 'paperCardId',
  patterns: 'patternId',
  people: 'personId',
  exhibitors: 'exhibitorId',
  horses: 'horseId',
  owners: 'ownerId',
  rings: 'ringId',
  postings: 'postingId',
  accounts: 'accountId',
  sessions: 'sessionId',
  invitations: 'invitationId',
  phones: 'phoneId',
  consents: 'consentId',
};

/** Not learned: with these the run would soon close the accounts and phones that it sends from. */
const ofSenders = new Set(['accountId', 'sessionId', 'phoneId']);

export type Ids = Readonly<Record<string, readonly string[]>>;

export class KnownRecords {
  readonly #prepared: Ids;
  readonly #fromAnswers = new Map<string, string[]>();
  readonly #etags = new Map<string, string>();

  readonly #together: readonly Readonly<Record<string, string>>[];

  /** `together`: ids that belong to one class each. */
  constructor(prepared: Ids, together: readonly Readonly<Record<string, string>>[]) {
    this.#prepared = prepared;
    this.#together = together;
  }

  /** `at`, 0 to 1, chooses. */
  together(at: number): Readonly<Record<string, string>> {
    return this.#together[Math.floor(at * this.#together.length)] ?? {};
  }

  /** `at`, 0 to 1, chooses; three times out of four a record of the prepared show. */
  pick(of: string, at: number): string {
    const name = of.endsWith('Ids') ? of.slice(0, -1) : of;
    const prepared = this.#prepared[name] ?? [];
    const made = this.#fromAnswers.get(name) ?? [];
    const [from, share] = at < 0.75 || made.length === 0 ? [prepared, at / 0.75] : [made, (at - 0.75) * 4];
    return from[Math.floor((share % 1) * from.length)] ?? '0198f0a0-0000-7000-8000-000000000000';
  }

  etagOf(address: string): string | undefined {
    return this.#etags.get(address);
  }

  /** Takes note of every id in an answer, and of the version of what stands at the address. */
  learn(address: string, etag: string | undefined, body: unknown): void {
    if (etag !== undefined) this.#etags.set(address, etag);
    this.#walk(body, nameOfCollection(address));
  }

  #walk(value: unknown, idsAre: string | undefined): void {
    if (typeof value !== 'object' || value === null) return;
    for (const [member, inside] of Object.entries(value)) {
      const name = member === 'id' ? idsAre : member;
      if (typeof inside === 'string' && name?.endsWith('Id') === true) this.#add(name, inside);
      else this.#walk(inside, member === 'class' ? 'classId' : idsAre);
    }
  }

  #add(name: string, id: string): void {
    if (ofSenders.has(name)) return;
    const known = this.#fromAnswers.get(name) ?? [];
    if (known.includes(id) || this.#prepared[name]?.includes(id) === true) return;
    known.push(id);
    this.#fromAnswers.set(name, known.slice(-mostFromAnswers));
  }
}

function nameOfCollection(address: string): string | undefined {
  const segments = address.split('?')[0]?.split('/') ?? [];
  const at = segments.findLastIndex((segment) => segment in collections || segment === 'entries');
  const segment = segments[at] ?? '';
  if (segment !== 'entries') return collections[segment];
  return segments.includes('classes') ? 'classEntryId' : 'entryId';
}
