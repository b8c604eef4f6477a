/** The invented show of `seed/demo-show`, read and checked. */

import { readFileSync } from 'node:fs';
import { z } from 'zod';
import { duties } from '../../access/index.ts';
import type { PatternDrawing } from '../../engine/patterns/types.ts';
import type { PlacingRule } from '../../engine/placing/types.ts';
import { rulingCodes } from '../../engine/sheets/types.ts';
import { classStates } from '../../results/index.ts';

const backNumber = z.int();
const judge = z.int().min(1).describe('Seat on the panel of the class.');

/** What happens in a class beside the ordinary. */
const tale = z.discriminatedUnion('tale', [
  z.strictObject({ tale: z.literal('scores'), entry: backNumber, byJudge: z.array(z.string()) }),
  /** The second entry gets the goes of the first, each from the next judge: the same sum from other cards. */
  z.strictObject({ tale: z.literal('level'), entries: z.tuple([backNumber, backNumber]) }),
  z.strictObject({ tale: z.literal('ranking'), judge, order: z.array(backNumber) }),
  z.strictObject({
    tale: z.literal('ruling'),
    entry: backNumber,
    judges: z.array(judge),
    ruling: z.enum(rulingCodes),
    remark: z.string(),
  }),
  z.strictObject({
    tale: z.literal('not-seen'),
    entry: backNumber,
    judge,
    maneuver: z.int(),
    remark: z.string(),
  }),
  /** The judge wrote two goes under each other's number, and amends her card after the result was official. */
  z.strictObject({
    tale: z.literal('swapped'),
    judge,
    entries: z.tuple([backNumber, backNumber]),
    reason: z.string(),
  }),
  /** The judge wrote on paper; two of the office typed it, and one of them misread two numbers for each other. */
  z.strictObject({
    tale: z.literal('paper'),
    judge,
    misread: z.tuple([backNumber, backNumber]),
    reason: z.string(),
  }),
  z.strictObject({ tale: z.literal('scratched'), entry: backNumber, reason: z.string() }),
  z.strictObject({ tale: z.literal('no-show'), entry: backNumber, reason: z.string() }),
  z.strictObject({ tale: z.literal('late-add'), entry: backNumber, reason: z.string() }),
  /** The address of a video of the go: invented, so nobody is there (RFC 2606). */
  z.strictObject({ tale: z.literal('video'), entry: backNumber, url: z.url() }),
  z.strictObject({ tale: z.literal('combined-into'), class: z.int(), reason: z.string() }),
  z.strictObject({ tale: z.literal('goes-marked'), count: z.int() }),
  /** All have signed but this one: hers is left to whoever looks at the demo. */
  z.strictObject({ tale: z.literal('card-missing'), judge }),
]);
export type Tale = z.infer<typeof tale>;
export type TaleOf<Name extends Tale['tale']> = Extract<Tale, { tale: Name }>;

const maneuver = z.strictObject({
  name: z.string(),
  description: z.string().optional(),
  startCone: z.string().optional(),
  endCone: z.string().optional(),
  gait: z.string().optional(),
  leadOrDiagonal: z.enum(['left', 'right']).optional(),
  coefficient: z.string().optional(),
});

const demoClass = z.strictObject({
  number: z.int(),
  name: z.string(),
  discipline: z.string(),
  division: z.string(),
  youth: z.boolean(),
  sheet: z.string(),
  pattern: z.string().nullable(),
  /** The service checks it when the class is added. */
  placingRule: z.custom<PlacingRule>((value) => typeof value === 'object' && value !== null),
  ring: z.string(),
  /** By the clock of the show grounds. */
  at: z.string(),
  /** The show's judges by their number, in the order of seats. */
  judges: z.array(z.int().min(1)),
  refereeSeat: judge.optional(),
  field: z.array(backNumber),
  state: z.enum(classStates),
  tales: z.array(tale),
});
export type DemoClass = z.infer<typeof demoClass>;

const demoShow = z.strictObject({
  show: z.strictObject({
    name: z.string(),
    place: z.string(),
    timeZone: z.string(),
    firstDay: z.string(),
    lastDay: z.string(),
  }),
  rings: z.array(z.string()),
  judges: z.array(z.string()),
  patterns: z.array(z.strictObject({ name: z.string(), maneuvers: z.array(maneuver) })),
  classes: z.array(demoClass),
  marksSeed: z.string(),
});

const demoPeople = z.strictObject({
  office: z.array(z.strictObject({ signIn: z.string(), name: z.string(), duty: z.enum(duties) })),
  exhibitors: z.array(
    z.strictObject({
      key: z.string(),
      name: z.string(),
      group: z.string(),
      bornOn: z.string().optional(),
      /** For the announcer. */
      spokenAs: z.string().optional(),
      publicName: z.enum(['full', 'first-name-and-initial', 'back-number']).optional(),
    }),
  ),
  entries: z.array(
    z.strictObject({
      backNumber,
      exhibitor: z.string(),
      horse: z.string(),
      horseSpokenAs: z.string().optional(),
      owner: z.string(),
    }),
  ),
});

/** By the name of the pattern. The service checks them when a pattern is added. */
const demoDrawings = z.record(
  z.string(),
  z.custom<PatternDrawing>((value) => typeof value === 'object'),
);

export type DemoShow = z.infer<typeof demoShow> &
  z.infer<typeof demoPeople> & { readonly drawings: z.infer<typeof demoDrawings> };

/** Throws where a file is not of this form: they come with Ringledger. */
export function readDemoShow(): DemoShow {
  return {
    ...demoShow.parse(readSeed('show.json')),
    ...demoPeople.parse(readSeed('people.json')),
    drawings: demoDrawings.parse(readSeed('drawings.json')),
  };
}

const readSeed = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../../seed/demo-show/${name}`, import.meta.url), 'utf8'));

export function talesOf<Name extends Tale['tale']>(
  { tales }: Pick<DemoClass, 'tales'>,
  name: Name,
): readonly TaleOf<Name>[] {
  return tales.filter((one): one is TaleOf<Name> => one.tale === name);
}
