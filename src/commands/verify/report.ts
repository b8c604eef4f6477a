/** What was checked, what was found, and what such a check cannot show: as lines to read. */
import type { Archive, Asked, Fault, Verified } from '../../archive/offline.ts';

const toldAtMost = 50;

export function report({ archive, faults }: Verified, asked: Asked): string {
  const checked =
    archive === undefined ? [] : [...aboutShow(archive), '', ...counts(archive), '', ...keys(archive, asked)];
  return [...checked, '', ...limits(asked), '', ...verdict(faults)].join('\n').trimStart();
}

function aboutShow({ show, names, exportedAt, head }: Archive): string[] {
  return [
    `Show ${show.id}, ${show.kind}: ${show.name}, ${show.place}, ${show.firstDay} to ${show.lastDay}`,
    `Exported ${exportedAt}, ${names === 'full' ? 'with names' : 'without names'}`,
    `Head: line ${head.sequence}, ${head.hash}`,
  ];
}

function counts(archive: Archive): string[] {
  const { lines, entries, phones, revisions, paperPhotos, rulings, postings } = archive;
  const onPaper = revisions.filter(({ paperCardId }) => paperCardId !== null).length;
  const unseen = paperPhotos.filter(({ bytes }) => bytes === null).length;
  const photos = `photos of paper cards${unseen === 0 ? '' : `, ${unseen} of them by fingerprint only`}`;
  const checked: [number, string][] = [
    [
      lines.length,
      'lines of the ledger: number, link, hash and seal of each, and the records that they name',
    ],
    [entries.length, 'entries: rider, horse and number as the ledger tells'],
    [phones.length, 'phones: key, pairing and revocation'],
    [revisions.length - onPaper, 'cards signed by phones: signature, holder of the phone, chain, line'],
    [onPaper, 'cards on paper: two people, the same content, salted hash'],
    [paperPhotos.length, photos],
    [rulings.length, 'rulings'],
    [postings.length, 'postings: signature, head, line, and computed anew from the cards'],
  ];
  return ['Checked:', ...checked.map(([count, what]) => `${String(count).padStart(7)}  ${what}`)];
}

function keys({ keys: own }: Archive, { trustedKeys }: Asked): string[] {
  const whose =
    trustedKeys === undefined ? 'as the archive names them' : 'only those that were brought are believed';
  return [
    `Keys of the service (RFC 7638 thumbprints), ${whose}:`,
    ...own.map(
      ({ kid, source }) =>
        `  ${kid}${source === 'imported' ? ' (of the service that the show came from)' : ''}`,
    ),
  ];
}

function limits({ trustedKeys, head }: Asked): string[] {
  return [
    'What this check cannot show:',
    '  - whether what a judge signed is what she saw, or what two people read is what stood on the paper',
    '  - who held a phone, beyond that its key was paired for that judge',
    ...(trustedKeys === undefined
      ? [
          "  - whose keys these are: compare the thumbprints with the service's, or bring its JWKS with --keys",
        ]
      : []),
    ...(head === undefined
      ? [
          '  - whether lines were cut off at the end: bring a head that was written down with --head NUMBER:HASH',
        ]
      : ['  - whether lines behind the one that was written down were cut off at the end']),
    '  - what somebody did who holds the private key of the service as well as its database',
  ];
}

function verdict(faults: readonly Fault[]): string[] {
  if (faults.length === 0) return ['No fault was found.'];
  const more = faults.length - toldAtMost;
  return [
    `Faults found: ${faults.length}.`,
    ...faults.slice(0, toldAtMost).map(({ code, at, message }) => `  ${code}  ${at}: ${message}`),
    ...(more > 0 ? [`  ... and ${more} more`] : []),
  ];
}
