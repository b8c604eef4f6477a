/** A planned request becomes one that can be sent: ids are chosen, the address and the body are written. */

import { examples } from '../api/matrix/examples.ts';
import { RawJson } from './hostile.ts';
import type { KnownRecords } from './known-records.ts';
import type { Operation } from './operations.ts';
import { type NearlyRight, type PlannedRequest, spoiled } from './requests.ts';
import { KeyedMembers, PickedId } from './valid-values.ts';

export interface WrittenRequest {
  readonly method: string;
  readonly address: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly payload: string | undefined;
}

/** After these no card of the class is written any more, so in their right form they come seldom. */
const endsJudging = /\/(cancellation|withdrawal|status|combinations|splits|withdrawals)$/;

export function written(planned: PlannedRequest, known: KnownRecords): WrittenRequest {
  const { operation, headers, ifMatch, idempotencyKey, body, example } = planned;
  const mayEnd = !endsJudging.test(operation.path) || (example?.at ?? 0) > 0.95;
  if (example !== undefined && mayEnd) return nearlyRight(operation, example, known);
  const address = addressOf(planned, known);
  const etag = versionFor(address, known);
  const payload = body === undefined ? undefined : jsonText(body, known);
  return {
    method: operation.method,
    address,
    payload,
    headers: {
      ...(payload === undefined ? {} : { 'content-type': 'application/json' }),
      ...(ifMatch && operation.method !== 'GET' ? { 'if-match': etag } : {}),
      ...(idempotencyKey === undefined ? {} : { 'idempotency-key': `fuzz-${idempotencyKey}` }),
      ...Object.fromEntries(headers),
    },
  };
}

function nearlyRight(
  { method, path }: Operation,
  { at, spoil }: NearlyRight,
  known: KnownRecords,
): WrittenRequest {
  const ids = known.together(at);
  const {
    body,
    query,
    headers = {},
  } = examples[`${method} ${path.replace(/\{(\w+)\}/g, ':$1')}`]?.(ids) ?? {};
  const address = path.replace(/\{(\w+)\}/g, (_, name: string) => ids[name] ?? 'none');
  const sent = spoil === undefined || typeof body !== 'object' ? body : spoiled(body, spoil);
  const payload = sent === undefined ? undefined : typeof sent === 'string' ? sent : jsonText(sent, known);
  return {
    method,
    address: query === undefined ? address : `${address}?${query}`,
    payload,
    headers: {
      ...(payload === undefined ? {} : { 'content-type': 'application/json' }),
      ...headers,
      ...('if-match' in headers ? { 'if-match': versionFor(address, known) } : {}),
    },
  };
}

/** Of the record itself, of what a posting is made of, or of the record that it is part of. */
function versionFor(address: string, known: KnownRecords): string {
  const [path = ''] = address.split('?');
  const above = path.slice(0, path.lastIndexOf('/'));
  const places = [address, path, path.replace(/\/postings$/, '/tabulation'), above];
  return places.map((place) => known.etagOf(place)).find((etag) => etag !== undefined) ?? '"1"';
}

function addressOf({ operation, params, query, rawQuery }: PlannedRequest, known: KnownRecords): string {
  const path = operation.path.replace(/\{(\w+)\}/g, (_, name: string) => segmentText(params[name], known));
  const asked = Object.entries(query).map(([name, value]) => `${name}=${encoded(plainText(value, known))}`);
  const all = rawQuery === undefined ? asked : [...asked, rawQuery];
  return all.length === 0 ? path : `${path}?${all.join('&')}`;
}

function segmentText(value: unknown, known: KnownRecords): string {
  if (value instanceof RawJson) return value.text;
  // An empty segment would be another address.
  return encoded(plainText(value, known)).replaceAll('.', '%2E') || '%20';
}

function plainText(value: unknown, known: KnownRecords): string {
  if (value instanceof PickedId) return known.pick(value.of, value.at);
  if (value instanceof RawJson) return value.text;
  return typeof value === 'object' ? JSON.stringify(value).slice(0, 2_000) : String(value).slice(0, 2_000);
}

/** A lone surrogate cannot be written in an address. */
const encoded = (text: string): string => encodeURIComponent(Buffer.from(text).toString());

/** JSON text in which raw pieces stand as they are. */
function jsonText(value: unknown, known: KnownRecords): string {
  const raw: string[] = [];
  const text = JSON.stringify(value, (_, inside: unknown) => {
    if (inside instanceof PickedId) return known.pick(inside.of, inside.at);
    if (inside instanceof KeyedMembers) {
      return Object.fromEntries(inside.members.map(([key, one]) => [plainText(key, known), one]));
    }
    if (!(inside instanceof RawJson)) return inside;
    raw.push(inside.text);
    return `\uE000${raw.length - 1}\uE000`;
  });
  return (text ?? '').replace(/"\uE000(\d+)\uE000"/g, (_, at: string) => raw[Number(at)] ?? '');
}
