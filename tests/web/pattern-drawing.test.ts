/** The drawing of a pattern as it stands on a page: made without a browser, as the service makes it. */
import { readFileSync } from 'node:fs';
import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import type { PatternDrawing } from '../../src/engine/patterns/types.ts';
import { PatternDrawingFigure } from '../../src/web/shared/pattern-drawing.tsx';
import { longerSide, scaledDrawing } from '../../src/web/shared/pattern-drawing-scale.ts';
import { turnsText } from '../../src/web/shared/pattern-drawing-signs.tsx';
import { type Language, languages, makeWords, WordsContext } from '../../src/web/shared/words.tsx';

const text = (file: string) => readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8');
const drawings: Record<string, PatternDrawing> = JSON.parse(text('seed/demo-show/drawings.json'));
const drawn = (name: string): PatternDrawing => {
  const found = drawings[name];
  if (found === undefined) throw new Error(`${name} is not drawn`);
  return found;
};

interface More {
  readonly language?: Language;
  readonly highlighted?: number;
  readonly legend?: boolean;
}

function pageOf(name: string, { language = 'en', ...more }: More = {}): string {
  const words = makeWords(language, [text(`src/web/words/${language}/shared.ftl`)]);
  const figure = h(PatternDrawingFigure, { drawing: drawn(name), ...more });
  return render(h(WordsContext.Provider, { value: words, children: figure }));
}

const count = (html: string, part: string) => html.split(part).length - 1;
/** Left to right, top to bottom: what stands at these places in the SVG. */
const numbersIn = (html: string) =>
  [
    ...html.matchAll(/class="drawing-number" transform="translate\((-?\d+) (-?\d+)\)">.*?>(\d+)<\/text>/g),
  ].map(([, x, y, position]) => ({ x: Number(x), y: Number(y), position: Number(position) }));

describe('the drawing of a pattern', () => {
  test('says in words what it is, for whoever does not see it', () => {
    expect(pageOf('Lantern Lane')).toContain(
      'role="img" aria-label="Drawing of the pattern from above, 6 maneuvers, with the letters A, B, C, D, E. The maneuvers stand beside it in words."',
    );
    expect(pageOf('Reining Eight', { highlighted: 3 })).toContain(
      'aria-label="Drawing of the pattern from above, 7 maneuvers. The maneuvers stand beside it in words. Maneuver 3 stands out."',
    );
    expect(pageOf('Lantern Lane', { language: 'de' })).toContain(
      'Zeichnung der Aufgabe von oben, 6 Lektionen',
    );
  });

  test('has the line of each gait, and explains those that occur', () => {
    const html = pageOf('Lantern Lane');
    expect(count(html, 'drawing-way drawing-walk')).toBe(2);
    expect(count(html, 'drawing-way drawing-trot')).toBe(3);
    expect(count(html, 'drawing-way drawing-canter')).toBe(2);
    expect(html).toContain('Canter or lope');
    expect(html).not.toContain('Flying change');
    expect(pageOf('Reining Eight')).toContain('Flying change of lead');
    expect(pageOf('Lantern Lane', { legend: false })).not.toContain('Canter or lope');
  });

  test('lets one maneuver stand out, over the others', () => {
    const html = pageOf('Lantern Lane', { highlighted: 2 });
    expect(count(html, 'is-highlighted')).toBe(1);
    expect(count(html, 'is-faint')).toBe(5);
    expect(numbersIn(html).at(-1)?.position).toBe(2);
  });

  test('turns are told as they are spoken of: 1¼, 4', () => {
    expect([1, 2, 3, 4, 5, 16].map(turnsText)).toEqual(['¼', '½', '¾', '1', '1¼', '4']);
  });

  test.each(Object.keys(drawings))(
    '%s carries each number once, within the arena and off the others',
    (name) => {
      const { width, height } = scaledDrawing(drawn(name)).arena;
      expect(Math.max(width, height)).toBe(longerSide);
      const numbers = numbersIn(pageOf(name));
      expect(numbers.map(({ position }) => position)).toEqual(
        drawn(name).maneuvers.map(({ position }) => position),
      );
      for (const one of numbers) {
        expect(one.x > 0 && one.x < width && one.y > 0 && one.y < height).toBe(true);
        const near = numbers.filter((other) => Math.hypot(one.x - other.x, one.y - other.y) < 18);
        expect([one.position, near.length]).toEqual([one.position, 1]);
      }
    },
  );

  test.each(Object.keys(drawings))('%s needs nothing that the policy of pages forbids', (name) => {
    const html = pageOf(name);
    expect(html).not.toMatch(/ style=|<style|<script|href=/);
    expect(html).not.toMatch(/NaN|undefined/);
  });

  test.each(languages)('no word is missing in %s', (language) => {
    for (const name of Object.keys(drawings))
      expect(pageOf(name, { language })).not.toContain('shared-drawing');
  });
});
