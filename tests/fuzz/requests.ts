/** One request of the run: an operation, a sender, and values that are right, nearly right, or hostile. */
import fc, { type Arbitrary } from 'fast-check';
import {
  hostileBody,
  hostileHeaders,
  hostileQueries,
  hostileSegments,
  hostileValue,
  RawJson,
} from './hostile.ts';
import type { JsonSchema, Operation, Parameter } from './operations.ts';
import { KeyedMembers, PickedId, share, valid } from './valid-values.ts';

export interface PlannedRequest {
  readonly operation: Operation;
  /** 0 to 1: who sends it. */
  readonly sender: number;
  readonly params: Readonly<Record<string, unknown>>;
  readonly query: Readonly<Record<string, unknown>>;
  /** Hostile text behind the `?`. */
  readonly rawQuery: string | undefined;
  /** `undefined`: no body. */
  readonly body: unknown;
  readonly headers: readonly (readonly [string, string])[];
  /** Does it send the version that it read last from the same address? */
  readonly ifMatch: boolean;
  readonly idempotencyKey: number | undefined;
  /** Instead of all that: a request that is right in its form, with ids that belong together, or nearly so. */
  readonly example: NearlyRight | undefined;
}

export interface NearlyRight {
  /** 0 to 1: of which class. */
  readonly at: number;
  /** What is spoiled in its body; `undefined`: nothing. */
  readonly spoil: Spoil | undefined;
}

type Schemas = Readonly<Record<string, JsonSchema>>;

/** A fifth of the places in an address hold what was never an id. */
const segment = ({ name, schema }: Parameter, schemas: Schemas): Arbitrary<unknown> =>
  fc.oneof(
    { weight: 12, arbitrary: valid(schema, name, schemas) },
    { weight: 1, arbitrary: fc.constantFrom(...hostileSegments).map((text) => new RawJson(text)) },
  );

export function requestOf(operation: Operation, schemas: Schemas): Arbitrary<PlannedRequest> {
  const { parameters, body } = operation;
  const inPath = parameters.filter(({ in: where }) => where === 'path');
  const inQuery = parameters.filter(({ in: where }) => where === 'query');
  const needed = inQuery.filter(({ required }) => required).map(({ name }) => name);
  const recordOf = (of: readonly Parameter[], each: (one: Parameter) => Arbitrary<unknown>) =>
    Object.fromEntries(of.map((one) => [one.name, each(one)]));
  return fc.record({
    operation: fc.constant(operation),
    sender: share,
    params: fc.record(recordOf(inPath, (one) => segment(one, schemas))),
    query: fc.record(
      recordOf(inQuery, ({ name, schema }) => mutated(valid(schema, name, schemas))),
      { requiredKeys: needed },
    ),
    rawQuery: oneIn(12, fc.constantFrom(...hostileQueries)),
    body: body === undefined ? oneIn(10, hostileBody) : bodyOf(body, schemas),
    headers: fc.oneof(
      { weight: 6, arbitrary: fc.constant([]) },
      { weight: 1, arbitrary: fc.array(fc.constantFrom(...hostileHeaders), { minLength: 1, maxLength: 3 }) },
    ),
    ifMatch: fc.integer({ min: 0, max: 3 }).map((chance) => chance > 0),
    idempotencyKey: oneIn(4, fc.integer({ min: 1, max: 40 })),
    example: oneIn(3, fc.record({ at: share, spoil: oneIn(2, spoiling) })),
  });
}

const bodyOf = (schema: JsonSchema, schemas: Schemas): Arbitrary<unknown> =>
  fc.oneof(
    { weight: 6, arbitrary: valid(schema, 'body', schemas) },
    { weight: 3, arbitrary: mutated(valid(schema, 'body', schemas), 1) },
    { weight: 1, arbitrary: hostileBody },
  );

/** One time out of so many, else nothing. */
const oneIn = <T>(times: number, arbitrary: Arbitrary<T>): Arbitrary<T | undefined> =>
  fc
    .tuple(fc.noBias(fc.integer({ min: 1, max: times })), arbitrary)
    .map(([chance, value]) => (chance === 1 ? value : undefined));

type Spoiling = 'replace' | 'drop' | 'add' | 'double';

export interface Spoil {
  readonly how: Spoiling;
  readonly way: readonly number[];
  readonly by: unknown;
}

const spoiling: Arbitrary<Spoil> = fc.record({
  how: fc.constantFrom<Spoiling>('replace', 'drop', 'add', 'double'),
  way: fc.array(fc.nat(50), { minLength: 5, maxLength: 5 }),
  by: hostileValue,
});

/** Spoils one place of the value, one time out of so many. */
function mutated(values: Arbitrary<unknown>, times = 4): Arbitrary<unknown> {
  return fc
    .tuple(values, oneIn(times, spoiling))
    .map(([value, spoil]) => (spoil === undefined ? value : spoiled(value, spoil)));
}

const unknownMembers = [
  'id',
  'duty',
  'version',
  'createdAt',
  'showId',
  'signedBySeatId',
  '__proto__',
  'constructor',
];

export function spoiled(value: unknown, { how, way, by }: Spoil): unknown {
  const [step = 0, ...rest] = way;
  if (value instanceof KeyedMembers) {
    return new KeyedMembers(value.members.map(([key, one]) => [key, spoiled(one, { how, way: rest, by })]));
  }
  if (!isPlain(value) || rest.length === 0) return by;
  if (Array.isArray(value)) {
    if (how === 'double') return [...value, ...value];
    return value.map((one, at) => (at === step % value.length ? spoiled(one, { how, way: rest, by }) : one));
  }
  const entries = Object.entries(value);
  const at = step % Math.max(1, entries.length);
  if (how === 'add') {
    const name = unknownMembers[step % unknownMembers.length] ?? 'id';
    return Object.fromEntries([...entries, [name, by]]);
  }
  if (how === 'drop') return Object.fromEntries(entries.filter((_, index) => index !== at));
  return Object.fromEntries(
    entries.map(([name, one], index) => [name, index === at ? spoiled(one, { how, way: rest, by }) : one]),
  );
}

function isPlain(value: unknown): value is object {
  if (typeof value !== 'object' || value === null) return false;
  return !(value instanceof RawJson) && !(value instanceof PickedId);
}
