/** Values that a JSON Schema allows, with ids and words that mean something at the prepared show. */
import fc, { type Arbitrary } from 'fast-check';
import { hostileStrings } from './hostile.ts';
import type { JsonSchema } from './operations.ts';

/** An id that is chosen when the request is sent: of the records that are there by then. */
export class PickedId {
  /** `classId` */
  readonly of: string;
  /** 0 to 1. */
  readonly at: number;
  constructor(of: string, at: number) {
    this.of = of;
    this.at = at;
  }
}

type Schemas = Readonly<Record<string, JsonSchema>>;

interface Place {
  readonly schemas: Schemas;
  /** Name of the member that is being made. */
  readonly name: string;
  readonly depth: number;
}

const deepest = 8;

export function valid(schema: JsonSchema, name: string, schemas: Schemas): Arbitrary<unknown> {
  return valueFor(schema, { schemas, name, depth: 0 });
}

function valueFor(schema: JsonSchema, place: Place): Arbitrary<unknown> {
  const { $ref, anyOf, oneOf, allOf } = schema;
  if (place.depth > deepest) return fc.constant(null);
  if ($ref !== undefined) return valueFor(place.schemas[$ref.split('/').at(-1) ?? ''] ?? {}, place);
  if ('const' in schema) return fc.constant(schema.const);
  if (schema.enum !== undefined) return fc.constantFrom(...schema.enum);
  const choices = anyOf ?? oneOf;
  if (choices !== undefined) return fc.oneof(...choices.map((one) => valueFor(one, deeper(place))));
  if (allOf !== undefined) return valueFor(merged(allOf), place);
  return byType(schema, place);
}

const deeper = (place: Place, name = place.name): Place => ({ ...place, name, depth: place.depth + 1 });

const merged = (parts: readonly JsonSchema[]): JsonSchema => ({
  type: 'object',
  properties: Object.assign({}, ...parts.map(({ properties }) => properties ?? {})),
  required: parts.flatMap(({ required }) => required ?? []),
});

function byType(schema: JsonSchema, place: Place): Arbitrary<unknown> {
  const type = Array.isArray(schema.type) ? schema.type[0] : schema.type;
  switch (type) {
    case 'object':
      return objectOf(schema, place);
    case 'array':
      return arrayOf(schema, place);
    case 'string':
      return stringOf(schema, place.name);
    case 'integer':
    case 'number':
      return numberOf(schema);
    case 'boolean':
      return fc.boolean();
    case 'null':
      return fc.constant(null);
    default:
      return fc.jsonValue({ maxDepth: 2 });
  }
}

function objectOf(schema: JsonSchema, place: Place): Arbitrary<unknown> {
  const { properties, additionalProperties, required = [] } = schema;
  if (properties === undefined) {
    const member = typeof additionalProperties === 'object' ? additionalProperties : {};
    const entry = fc.tuple(keyOf(place.name), valueFor(member, deeper(place)));
    return fc.array(entry, { maxLength: 4 }).map((members) => new KeyedMembers(members));
  }
  const members = Object.fromEntries(
    Object.entries(properties).map(([name, one]) => [name, valueFor(one, deeper(place, name))]),
  );
  return fc.record(members, { requiredKeys: required.filter((name) => name in members) });
}

/** An object whose keys are ids, such as the goes of a card. */
export class KeyedMembers {
  readonly members: readonly (readonly [unknown, unknown])[];
  constructor(members: readonly (readonly [unknown, unknown])[]) {
    this.members = members;
  }
}

const keyOf = (name: string): Arbitrary<unknown> =>
  name === 'goes'
    ? picked('classEntryId')
    : fc.constantFrom('form-and-effectiveness', 'time', 'rider', 'collective', 'a');

function arrayOf(schema: JsonSchema, place: Place): Arbitrary<unknown> {
  const { items = {}, prefixItems, minItems = 0, maxItems = 5 } = schema;
  const inside = deeper(place, place.name.replace(/s$/, ''));
  if (prefixItems !== undefined) return fc.tuple(...prefixItems.map((one) => valueFor(one, inside)));
  const most = Math.max(minItems, Math.min(maxItems, 5));
  return fc.array(valueFor(items, inside), {
    minLength: Math.min(minItems, 30),
    maxLength: Math.min(most, 30),
  });
}

/** From 0 to below 1, every part as likely as any other. */
export const share: Arbitrary<number> = fc.noBias(fc.nat(99_999)).map((part) => part / 100_000);

const picked = (of: string): Arbitrary<PickedId> => share.map((at) => new PickedId(of, at));

/** Words of a show, so that a good part of what is sent is taken. */
const words = [
  'Larch',
  'Ring 1',
  'Horsemanship',
  'Youth',
  'Ada Kessler',
  'a tie at third',
  'horsemanship',
  'B',
];
const marks = ['0', '0.5', '-1.5', '-3', '3', '70', '71.5', '100', '1', '2.25', '-0', '03', '1/3'];

function stringOf({ format, pattern, maxLength = 40, minLength = 0 }: JsonSchema, name: string) {
  if (format === 'uuid') return picked(name);
  if (format === 'date') return fc.constantFrom('2026-05-02', '2026-05-03', '2012-07-01', '1970-01-01');
  if (format === 'date-time') {
    return fc.constantFrom('2026-05-02T15:00:00.000Z', '2026-05-02T09:00:00-05:00', '2030-01-01T00:00:00Z');
  }
  if (pattern !== undefined) return matching(pattern);
  const usual = fc.constantFrom(...words, ...marks);
  const any = fc.string({ unit: 'grapheme', minLength, maxLength: Math.min(maxLength, 60) });
  return fc.oneof(
    { weight: 6, arbitrary: usual },
    { weight: 2, arbitrary: any },
    { weight: 1, arbitrary: fc.constantFrom(...hostileStrings) },
  );
}

function matching(pattern: string): Arbitrary<string> {
  try {
    return fc.stringMatching(new RegExp(pattern, 'u'));
  } catch {
    return fc.constantFrom(...words);
  }
}

function numberOf({ minimum, maximum, type }: JsonSchema): Arbitrary<number> {
  const [min, max] = [minimum ?? -10, Math.min(maximum ?? 400, (minimum ?? 0) + 400)];
  if (type === 'number') return fc.double({ min, max, noNaN: true });
  return fc.integer({ min: Math.ceil(min), max: Math.max(Math.ceil(min), Math.floor(max)) });
}
