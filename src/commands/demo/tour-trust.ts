/** Stops of the tour: who may do what, what the judges signed, and how a change would be noticed. */
import { join } from 'node:path';
import { ask, by, type TourStop } from './tour-commands.ts';
import { type Places, withPaper } from './tour-places.ts';

/** `folder`: where the files of the stops may lie. */
export function trustStops(places: Places, folder: string): TourStop[] {
  const { address, v1, show, ofClass, firstPosting, child } = places;
  return [
    signIn(places),
    refused(places),
    {
      what: 'Class 12: a card came on paper. Two people typed it, differed in two places, and mended it',
      commands: [by('SECRETARY', `${ofClass(withPaper)}/paper-cards`)],
    },
    {
      what: "In which form a child's name may be public: the family's word. Each look leaves a line in the ledger",
      commands: [
        by('SECRETARY', `${show}/exhibitors/${child}/consents`),
        by('SECRETARY', `${show}/ledger?type=consent.opened`),
      ],
    },
    {
      what: 'The phones of the show, each with the thumbprint of its key; a lost one is shut out with DELETE',
      commands: [by('SECRETARY', `${show}/phones`)],
    },
    {
      what: 'The ledger: each line carries the hash of the line before. Its head is for everyone to write down',
      commands: [by('SECRETARY', `${show}/ledger?limit=3`), `${show}/ledger/head`],
    },
    {
      what: 'The keys by which the service signs, and a posting with its signature ("jws")',
      commands: [`${address}/.well-known/jwks.json`, `${v1}/postings/${firstPosting}`],
    },
    exportAndVerify(places, folder),
    {
      what: 'A rehearsal: a practice show like this one, without a name and without a card; nothing of it reaches this show',
      commands: [by('SECRETARY', `${show}/rehearsals`, '-X POST ')],
    },
  ];
}

function signIn({ v1 }: Places): TourStop {
  return {
    what: 'Sign in yourself: name, password, and the code that an authenticator app would show now',
    commands: [
      'npm run --silent ask -- secretary log-in',
      `npm run --silent ask -- secretary log-in | curl -s -H 'content-type: application/json' -d @- ${v1}/sessions`,
    ],
  };
}

function refused({ v1, show, cardOfJudge }: Places): TourStop {
  return {
    what: 'Judge 1 asks for the card of judge 2: refused, and the ledger tells of it',
    commands: [
      ask('judge-1', 'GET', `${v1}/cards/${cardOfJudge(2)}`),
      by('SECRETARY', `${show}/ledger?type=request.refused`),
    ],
  };
}

function exportAndVerify({ address, show }: Places, folder: string): TourStop {
  const [archive, changed, keys] = ['show', 'changed', 'keys'].map((name) => join(folder, `${name}.json`));
  return {
    what: 'The whole show in one file, checked without service and database; then one mark is changed, and the check finds it',
    commands: [
      by('SECRETARY', `${show}/archive?names=none`, `-o ${archive} `),
      `curl -s -o ${keys} ${address}/.well-known/jwks.json`,
      `npm run --silent verify -- ${archive} --keys ${keys}`,
      `sed 's/"mark":"1"/"mark":"2"/' ${archive} > ${changed}`,
      `npm run --silent verify -- ${changed} --keys ${keys}`,
    ],
  };
}
