/** A pattern is drawn by the office, and its drawing goes wherever the pattern goes. */
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { verifyArchive } from '../../src/archive/offline.ts';
import type { PatternDrawing } from '../../src/engine/patterns/types.ts';
import { buildTestApp, type TestApp } from '../support/test-app.ts';
import { bundle, type Made, type Office, openOffice, signCard, threeManeuvers } from './office-client.ts';

let service: TestApp;
let office: Office;

beforeAll(async () => {
  service = await buildTestApp();
  await bundle(service, 'horsemanship');
  office = await openOffice(service);
});
afterAll(() => service.close());

const cone = (letter: string, x: number) => ({ letter, x, y: 110, stands: 'cone' as const });
const straight = (x: number) => ({ kind: 'straight' as const, to: { x, y: 100 } });
const at = (x: number) => ({ x, y: 100 });
const drawing: PatternDrawing = {
  arena: { width: 400, height: 200 },
  cones: [cone('A', 100), cone('B', 200), cone('C', 300)],
  obstacles: [{ kind: 'pole', from: { x: 250, y: 80 }, to: { x: 250, y: 120 } }],
  maneuvers: [
    { position: 1, strokes: [{ gait: 'walk', from: at(100), steps: [straight(200)] }], marks: [] },
    {
      position: 2,
      strokes: [
        { gait: 'trot', from: at(200), steps: [{ kind: 'circle', hand: 'left', center: { x: 200, y: 50 } }] },
      ],
      marks: [{ kind: 'halt', at: at(200) }],
    },
    { position: 3, strokes: [{ gait: 'canter', from: at(200), steps: [straight(300)] }], marks: [] },
  ],
};

let count = 0;
const body = (drawn: object | null = drawing) => {
  count += 1;
  return { name: `Pattern ${count}`, maneuvers: threeManeuvers, drawing: drawn };
};

describe('the drawing of a pattern', () => {
  test('is given back as it was put, with the pattern and in the list', async () => {
    const made = await office.done('post', '/patterns', body());
    expect(made.drawing).toEqual(drawing);
    expect((await office.done('get', `/patterns/${made.id}`)).drawing).toEqual(drawing);
    const { items } = await office.done('get', '/patterns');
    expect(items.find(({ id }: Made) => id === made.id).drawing).toEqual(drawing);
  });

  test('may be left out, put later, and taken off', async () => {
    const { drawing: _, ...plain } = body();
    const made = await office.done('post', '/patterns', plain);
    expect(made.drawing).toBeNull();
    const path = `/patterns/${made.id}`;
    const drawn = await office.done('put', path, { ...plain, drawing }, { 'if-match': '"1"' });
    expect([drawn.drawing, drawn.version]).toEqual([drawing, 2]);
    const bare = await office.done('put', path, { ...plain, drawing: null }, { 'if-match': '"2"' });
    expect([bare.drawing, bare.version]).toEqual([null, 3]);
  });

  test('that does not show the pattern is refused, and every fault is named by its field', async () => {
    const [, ...rest] = drawing.maneuvers;
    const wrong = { ...drawing, cones: drawing.cones.slice(1), maneuvers: rest };
    const answer = await office.call('post', '/patterns', { body: body(wrong) });
    expect(answer.status).toBe(422);
    expect(answer.body.code).toBe('drawing_invalid');
    expect(answer.body.errors).toEqual([
      { field: '/drawing/cones', message: 'a maneuver names cone A, and it is not drawn' },
      { field: '/drawing/maneuvers', message: 'maneuver 1 is not drawn' },
    ]);
  });

  test('holds whole decimetres and nothing that it does not know', async () => {
    const inside = { ...drawing, arena: { width: 400.5, height: 200 } };
    const answer = await office.call('post', '/patterns', { body: body(inside) });
    expect([answer.status, answer.body.errors[0].field]).toEqual([400, '/drawing/arena/width']);
    const more = await office.call('post', '/patterns', { body: body({ ...drawing, color: 'red' }) });
    expect(more.status).toBe(400);
  });

  test('stays as it is once a card was written on it', async () => {
    const pattern = await office.done('post', '/patterns', body());
    const made = await office.addClass(40, { patternId: pattern.id });
    const judge = await office.done('post', '/people', { name: 'Judith Marlow' });
    const panel = await office.done(
      'put',
      `/classes/${made.id}/panel`,
      { seats: [{ personId: judge.id }] },
      { 'if-match': `"${made.version}"` },
    );
    await signCard(service, made.id, panel.seats[0].id, false);
    const answer = await office.call('put', `/patterns/${pattern.id}`, {
      body: { name: pattern.name, maneuvers: threeManeuvers, drawing: null },
      headers: { 'if-match': '"1"' },
    });
    expect([answer.status, answer.body.code]).toEqual([409, 'pattern_in_use']);
    expect((await office.done('get', `/patterns/${pattern.id}`)).drawing).toEqual(drawing);
  });

  test('comes along into a rehearsal', async () => {
    const own = await openOffice(service);
    await own.done('post', '/patterns', { name: 'Drawn', maneuvers: threeManeuvers, drawing });
    await own.done('post', '/patterns', { name: 'Not drawn', maneuvers: threeManeuvers });
    const rehearsal = await own.done('post', '/rehearsals');
    const rows = await service.parts.db.prisma.pattern.findMany({ where: { showId: rehearsal.id } });
    expect(Object.fromEntries(rows.map(({ name, drawing: drawn }) => [name, drawn]))).toEqual({
      Drawn: drawing,
      'Not drawn': null,
    });
  });

  test('is part of the archive, which is good with it, and without it as older services wrote it', async () => {
    const own = await openOffice(service);
    await own.done('post', '/patterns', { name: 'Drawn', maneuvers: threeManeuvers, drawing });
    const archive = await own.done('get', '/archive?names=full');
    expect(archive.patterns[0].drawing).toEqual(drawing);
    expect((await verifyArchive(archive)).faults).toEqual([]);
    const { drawing: _, ...older } = archive.patterns[0];
    const faults = (await verifyArchive({ ...archive, patterns: [older] })).faults;
    // It is read; only the signature over the whole notices that something was taken out.
    expect(faults.map(({ code }) => code)).toEqual(['archive_altered']);
  });
});

describe('the demo show', () => {
  test('has a drawing for each of its patterns that the service takes', async () => {
    const own = await openOffice(service);
    const seed = (name: string) => JSON.parse(readFileSync(`seed/demo-show/${name}`, 'utf8'));
    const drawings = seed('drawings.json');
    const { patterns } = seed('show.json');
    for (const pattern of patterns) {
      const made = await own.done('post', '/patterns', { ...pattern, drawing: drawings[pattern.name] });
      expect(made.drawing).toEqual(drawings[pattern.name]);
    }
    expect(Object.keys(drawings)).toHaveLength(patterns.length);
  });
});
