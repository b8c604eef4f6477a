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
    rawQuery: rarely(fc.constantFrom(...hostileQueries), 12),
    body: body === undefined ? rarely(hostileBody, 10) : bodyOf(body, schemas),
    headers: fc.oneof(
      { weight: 6, arbitrary: fc.constant([]) },
      { weight: 1, arbitrary: fc.array(fc.constantFrom(...hostileHeaders), { minLength: 1, maxLength: 3 }) },
    ),
    ifMatch: fc.integer({ min: 0, max: 3 }).map((chance) => chance > 0),
    idempotencyKey: rarely(fc.integer({ min: 1, max: 40 }), 4),
  });
}

const rarely = <T>(arbitrary: Arbitrary<T>, oneIn: number): Arbitrary<T | undefined> =>
  fc
    .option(arbitrary, { nil: undefined, freq: oneIn })
    .chain((value) => fc.integer({ min: 1, max: oneIn }).map((chance) => (chance === 1 ? value : undefined)));

const bodyOf = (schema: JsonSchema, schemas: Schemas): Arbitrary<unknown> =>
  fc.oneof(
    { weight: 6, arbitrary: valid(schema, 'body', schemas) },
    { weight: 3, arbitrary: mutated(valid(schema, 'body', schemas), 1) },
    { weight: 1, arbitrary: hostileBody },
  );

type Spoiling = 'replace' | 'drop' | 'add' | 'double';

/** Spoils one place of the value, one time out of so many. */
function mutated(values: Arbitrary<unknown>, oneIn = 4): Arbitrary<unknown> {
  const spoil = fc.record({
    how: fc.constantFrom<Spoiling>('replace', 'drop', 'add', 'double'),
    way: fc.array(fc.nat(50), { minLength: 5, maxLength: 5 }),
    by: hostileValue,
    whether: fc.integer({ min: 1, max: oneIn }),
  });
  return fc
    .tuple(values, spoil)
    .map(([value, { how, way, by, whether }]) => (whether === 1 ? spoiled(value, { how, way, by }) : value));
}

interface Spoil {
  readonly how: Spoiling;
  readonly way: readonly number[];
  readonly by: unknown;
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

function spoiled(value: unknown, { how, way, by }: Spoil): unknown {
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
