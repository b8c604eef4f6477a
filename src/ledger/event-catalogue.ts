/** Everything that may happen to a show's records, once. `api-docs/events.md` is written from this. */

interface EventKind {
  /** Does whoever looks at the show from outside hear of it? */
  readonly public: boolean;
  readonly what: string;
  /** What the body holds: ids and numbers, never names. */
  readonly body: Readonly<Record<string, string>>;
}

const paperCard = {
  classId: 'the class',
  seatId: 'the seat',
  cardId: 'the card',
  paperCardId: 'the paper card',
};

const entry = {
  entryId: 'the entry',
  backNumber: 'the back number',
  exhibitorId: 'who shows',
  horseId: 'on which horse',
  ownerId: 'whose horse it is; null: not said',
  version: 'version of the entry',
};

const kinds = {
  'show.created': {
    public: true,
    what: 'A show was set up.',
    body: {
      showId: 'the show',
      kind: 'official or practice',
      rehearsalOf: 'the show that it rehearses, where it does',
    },
  },
  'show.changed': {
    public: true,
    what: 'Name, place, days or name rules of the show changed.',
    body: { showId: 'the show', version: 'new version' },
  },
  'show.exported': {
    public: false,
    what: 'The office took out the archive of the show, with its names.',
    body: { showId: 'the show', head: 'number of the last line that is in it' },
  },
  'show.imported': {
    public: false,
    what: 'The show came here with an archive of another service, checked before.',
    body: {
      showId: 'the show',
      head: 'number of the last line that it brought',
      headHash: 'hash of that line',
    },
  },
  'rehearsal.made': {
    public: false,
    what: 'A practice show was made to rehearse this one.',
    body: { rehearsalId: 'the practice show' },
  },
  'rehearsal.filled': {
    public: false,
    what: 'Records were copied from the show that is rehearsed, without the name of anybody who rides.',
    body: {
      rehearsalOf: 'the show that is rehearsed',
      rings: 'how many',
      people: 'how many',
      patterns: 'how many',
      entries: 'how many',
      classes: 'how many',
    },
  },
  'ring.created': { public: false, what: 'A ring was added.', body: { ringId: 'the ring' } },
  'person.created': {
    public: false,
    what: 'Someone who may sit on a panel was added.',
    body: { personId: 'the person' },
  },
  'pattern.created': { public: false, what: 'A pattern was added.', body: { patternId: 'the pattern' } },
  'pattern.changed': {
    public: false,
    what: 'A pattern was changed before a card was signed on it.',
    body: { patternId: 'the pattern', version: 'new version' },
  },
  'exhibitor.created': {
    public: false,
    what: 'An exhibitor was added.',
    body: { exhibitorId: 'the exhibitor' },
  },
  'exhibitor.changed': {
    public: false,
    what: "An exhibitor's record changed.",
    body: { exhibitorId: 'the exhibitor', version: 'new version' },
  },
  'names.changed': {
    public: true,
    what: 'A name is shown otherwise from now on: whoever shows names reads them again. It does not say whose.',
    body: {},
  },
  'consent.recorded': {
    public: false,
    what: 'The office took down in which form a name may be public. It holds at once.',
    body: {
      exhibitorId: 'the exhibitor',
      consentId: 'the consent',
      publicName: 'full, first-name-and-initial or back-number',
    },
  },
  'consent.opened': {
    public: false,
    what: 'Somebody of the office looked at the consents of an exhibitor.',
    body: { exhibitorId: 'the exhibitor' },
  },
  'exhibitor.erased': {
    public: false,
    what: 'The name of an exhibitor was erased, for good.',
    body: {
      exhibitorId: 'the exhibitor',
      reason: 'asked-by-family, asked-by-exhibitor, authority or entered-in-error',
      ownerIds: 'owners whose names were erased with it',
    },
  },
  'horse.created': { public: false, what: 'A horse was added.', body: { horseId: 'the horse' } },
  'horse.changed': {
    public: false,
    what: 'How the name of a horse is spoken was taken down, or taken back.',
    body: { horseId: 'the horse' },
  },
  'owner.created': { public: false, what: 'An owner was added.', body: { ownerId: 'the owner' } },
  'entry.created': {
    public: false,
    what: 'An exhibitor with a horse got a back number.',
    body: entry,
  },
  'entry.changed': {
    public: false,
    what: 'An entry was changed: what it is now.',
    body: entry,
  },
  'entry.scratched': {
    public: true,
    what: 'An entry was scratched from a class.',
    body: { classId: 'the class', classEntryId: 'the class entry', backNumber: 'the back number' },
  },
  'class.created': {
    public: true,
    what: 'A class was added to the program.',
    body: { classId: 'the class', number: 'class number' },
  },
  'class.opened': {
    public: true,
    what: 'The first card of a class was opened, and nothing was written in it yet.',
    body: {
      classId: 'the class',
      goes: 'how many go in it',
      drafts: '0',
      revisions: '0',
      paperCards: '0',
      rulings: '0',
      postings: '0',
    },
  },
  'class.opening-refused': {
    public: false,
    what: 'A first card was to be opened where something was written already: the office has to look.',
    body: {
      classId: 'the class',
      drafts: 'how many',
      revisions: 'how many',
      paperCards: 'how many',
      rulings: 'how many',
      postings: 'how many',
    },
  },
  'class.changed': {
    public: true,
    what: 'A class of the program was changed.',
    body: { classId: 'the class', version: 'new version' },
  },
  'class.cancelled': { public: true, what: 'A class was cancelled.', body: { classId: 'the class' } },
  'class.split': {
    public: true,
    what: 'A class was split.',
    body: { classId: 'the class', intoClassIds: 'the new classes' },
  },
  'class.combined': {
    public: true,
    what: 'A class was combined into another.',
    body: { classId: 'the class', intoClassId: 'the class that it went into' },
  },
  'class.called': {
    public: true,
    what: 'A class was called to the ring.',
    body: { classId: 'the class', ringId: 'the ring, where one is set' },
  },
  'panel.seated': {
    public: false,
    what: 'A judge or referee was seated on the panel of a class.',
    body: { classId: 'the class', seatId: 'the seat' },
  },
  'panel.changed': {
    public: false,
    what: 'The panel of a class changed.',
    body: { classId: 'the class', seatId: 'the seat' },
  },
  'panel.withdrawn': {
    public: false,
    what: 'A judge left the panel of a class, with the reason.',
    body: { classId: 'the class', seatId: 'the seat' },
  },
  'class-entry.added': {
    public: true,
    what: 'An entry was added to a class.',
    body: {
      classId: 'the class',
      classEntryId: 'the class entry',
      entryId: 'the entry',
      backNumber: 'the back number',
    },
  },
  'class-entry.changed': {
    public: true,
    what: 'The status of an entry in a class changed: checked in, no-show, excused, moved.',
    body: { classId: 'the class', classEntryId: 'the class entry', status: 'new status' },
  },
  'class-entry.video-changed': {
    public: false,
    what: 'The office said where the video of a go is, or took it off.',
    body: { classId: 'the class', classEntryId: 'the class entry' },
  },
  'order.drawn': {
    public: true,
    what: 'The order of go was drawn, drawn again or set by hand.',
    body: { classId: 'the class', orderDrawId: 'the draw', kind: 'drawn, redrawn, by-hand or late-add' },
  },
  'card.opened': {
    public: false,
    what: 'The card of a seat was opened.',
    body: { classId: 'the class', seatId: 'the seat', cardId: 'the card' },
  },
  'card.signed': {
    public: true,
    what: 'A judge signed her card: it is in.',
    body: { classId: 'the class', seatId: 'the seat', cardId: 'the card', revisionId: 'the signed revision' },
  },
  'card.amended': {
    public: true,
    what: 'A signed card was amended, with the reason.',
    body: {
      classId: 'the class',
      seatId: 'the seat',
      cardId: 'the card',
      revisionId: 'the new revision',
      revision: 'its number',
    },
  },
  'card.paper-opened': {
    public: false,
    what: 'The office took up a card that came in on paper.',
    body: { ...paperCard, revision: 'which revision of the card it is to be' },
  },
  'card.paper-entered': {
    public: false,
    what: 'One person of the office entered a paper card, or corrected what she had entered.',
    body: { ...paperCard, accountId: 'who', version: 'how often she has saved it' },
  },
  'card.paper-accepted': {
    public: true,
    what: 'Two people of the office read the same off a paper card: it is in, as a revision of the card.',
    body: {
      ...paperCard,
      revisionId: 'the revision',
      revision: 'its number',
      enteredBy: 'the account that entered it',
      checkedBy: 'the account whose entry came to be the same',
      saltedHash:
        'SHA-256 over the canonical form (RFC 8785) of the content together with a random salt that is kept secret',
    },
  },
  'card.paper-withdrawn': {
    public: false,
    what: 'A paper card that was not accepted was withdrawn, with the reason.',
    body: paperCard,
  },
  'card.photo-stored': {
    public: false,
    what: 'A photo of a paper card was stored.',
    body: { ...paperCard, hash: 'SHA-256 of the picture' },
  },
  'ruling.made': {
    public: false,
    what: 'Someone with the right to do so decided a tie or an entry.',
    body: { classId: 'the class', rulingId: 'the ruling', kind: 'kind of ruling' },
  },
  'result.posted': {
    public: true,
    what: 'A result was posted.',
    body: {
      classId: 'the class',
      postingId: 'the posting',
      version: 'its number',
      state: 'provisional or official',
    },
  },
  'result.corrected': {
    public: true,
    what: 'A corrected result was posted, with the reason.',
    body: { classId: 'the class', postingId: 'the posting', version: 'its number' },
  },
  'query.asked': {
    public: false,
    what: 'A family says that something looks wrong about a class: the office has to look.',
    body: { queryId: 'the query', classId: 'the class' },
  },
  'query.answered': {
    public: true,
    what: 'The office answered a query. Whose, and about which class, knows whoever follows it.',
    body: { queryId: 'the query', answerId: 'the answer' },
  },
  'query.withdrawn': {
    public: false,
    what: 'A family took its query back, and its words are gone.',
    body: { queryId: 'the query', classId: 'the class' },
  },
  'query.erased': {
    public: false,
    what: 'The office took the words of a query and of its answers out, for good.',
    body: { queryId: 'the query', classId: 'the class' },
  },
  'invitation.made': {
    public: false,
    what: 'The office made a code with which a phone can be paired.',
    body: {
      invitationId: 'the invitation',
      role: 'judge, scribe or gate',
      personId: 'the judge, or the judge that the scribe writes for; null: the gate',
    },
  },
  'invitation.revoked': {
    public: false,
    what: 'The office took back a code that no phone had taken up.',
    body: { invitationId: 'the invitation' },
  },
  'phone.paired': {
    public: false,
    what: 'A phone took up an invitation with its own key.',
    body: {
      phoneId: 'the phone',
      invitationId: 'the invitation',
      role: 'judge, scribe or gate',
      personId: 'the judge, or the judge that the scribe writes for; null: the gate',
      thumbprint: 'thumbprint of its public key (RFC 7638)',
    },
  },
  'phone.revoked': {
    public: false,
    what: 'A phone was taken off the show: by the office, or by itself, as the actor says.',
    body: { phoneId: 'the phone' },
  },
  'request.refused': {
    public: false,
    what: 'A known account or phone was refused for want of a right, or because a pass or evidence did not hold.',
    body: {
      code: 'code of the refusal, see errors.md',
      method: 'HTTP method',
      route: 'the route as it stands in the API description, never the address as it came',
      times: 'how often: equal refusals within a minute are told together',
      phoneId: 'the phone whose token somebody used who does not hold its key; left out otherwise',
    },
  },
  'account.created': {
    public: false,
    what: 'An account of the office was made; it is set up with a one-time code.',
    body: {
      accountId: 'the account',
      duty: 'manager, secretary or points-secretary',
      wholeService: 'may it work at every show?',
      showIds: 'otherwise where',
    },
  },
  'account.changed': {
    public: false,
    what: 'Name, duty or shows of an account changed.',
    body: {
      accountId: 'the account',
      version: 'new version',
      duty: 'manager, secretary or points-secretary',
      wholeService: 'may it work at every show?',
      showIds: 'otherwise where',
    },
  },
  'account.set-up': {
    public: false,
    what: 'An account got its password and second factor, by its one-time code.',
    body: { accountId: 'the account' },
  },
  'account.password-changed': {
    public: false,
    what: 'The owner of an account changed its password.',
    body: { accountId: 'the account' },
  },
  'account.reset': {
    public: false,
    what: 'A manager made password and second factor of an account void; it is set up anew.',
    body: { accountId: 'the account' },
  },
  'account.closed': {
    public: false,
    what: 'An account was closed for good.',
    body: { accountId: 'the account' },
  },
  'session.begun': {
    public: false,
    what: 'Somebody of the office signed in.',
    body: { sessionId: 'the session', accountId: 'the account' },
  },
  'session.ended': {
    public: false,
    what: 'A session was ended before its time.',
    body: {
      sessionId: 'the session',
      accountId: 'whose it was',
      why: 'signed-out, ended, password-changed, reset or closed',
    },
  },
  'session.refused': {
    public: false,
    what: 'Name, password and code of a sign-in did not fit together, or a password typed to change it was wrong.',
    body: { accountId: 'the account; null: there is none of the name that was typed' },
  },
  'signing-key.added': {
    public: false,
    what: 'The service signs with a new key from now on; what older keys signed stays good.',
    body: { kid: 'thumbprint of the public key (RFC 7638)' },
  },
} as const satisfies Record<string, EventKind>;

export type LineType = keyof typeof kinds;

export const eventCatalogue: Readonly<Record<LineType, EventKind>> = kinds;

export const lineTypes = Object.keys(kinds) as readonly LineType[];

export const publicLineTypes: readonly LineType[] = lineTypes.filter((type) => kinds[type].public);

/** A line of a type that this version does not know is kept back. */
export const isPublicLine = (type: string): boolean => publicLineTypes.some((known) => known === type);
