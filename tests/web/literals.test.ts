/**
 * No word of a page stands in its code: what a reader sees or hears is in the message files, in each language. Read off
 * the syntax of every page, so that the next one is found too.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { filesIn, messagesIn, textOf } from '../language/message-files.ts';

const pages = fileURLToPath(new URL('../../src/web', import.meta.url));
const filesOf = (ending: RegExp) =>
  readdirSync(pages, { recursive: true, encoding: 'utf8' }).filter(
    (file) => ending.test(file) && !file.includes('generated'),
  );

/** What a screen reader or a hovering pointer says. */
const spokenAttributes = [
  ...['aria-label', 'aria-description', 'aria-roledescription', 'aria-valuetext'],
  ...['title', 'placeholder', 'alt', 'label'],
];

/** Letters of a word; signs, figures and a mark's "+½" belong to every language. */
const isWord = (text: string): boolean => /\p{L}{2,}/u.test(text);

/** Each literal that is shown or spoken, as `line: text`. */
function literalsIn(file: string, text: string): string[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX);
  const found: string[] = [];
  const add = (node: ts.Node, words: string) => {
    const { line } = source.getLineAndCharacterOfPosition(node.getStart());
    if (isWord(words)) found.push(`${line + 1}: ${words.trim()}`);
  };
  const visit = (node: ts.Node): void => {
    if (ts.isJsxText(node)) add(node, node.text);
    if (ts.isJsxAttribute(node) && spokenAttributes.includes(node.name.getText()))
      for (const words of shownBy(node.initializer)) add(node, words);
    if (ts.isJsxExpression(node) && isChild(node)) for (const words of shownBy(node)) add(node, words);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

const isChild = ({ parent }: ts.Node): boolean => ts.isJsxElement(parent) || ts.isJsxFragment(parent);

/** The literals that an expression may become: those of both branches, of what is joined, of a template. */
function shownBy(node: ts.Node | undefined): string[] {
  if (node === undefined) return [];
  if (ts.isStringLiteralLike(node)) return [node.text];
  if (ts.isJsxExpression(node) || ts.isParenthesizedExpression(node)) return shownBy(node.expression);
  if (ts.isConditionalExpression(node)) return [...shownBy(node.whenTrue), ...shownBy(node.whenFalse)];
  if (ts.isTemplateExpression(node))
    return [
      node.head.text,
      ...node.templateSpans.flatMap(({ expression, literal }) => [literal.text, ...shownBy(expression)]),
    ];
  if (!ts.isBinaryExpression(node)) return [];
  const joins = [ts.SyntaxKind.PlusToken, ts.SyntaxKind.QuestionQuestionToken, ts.SyntaxKind.BarBarToken];
  if (joins.includes(node.operatorToken.kind)) return [...shownBy(node.left), ...shownBy(node.right)];
  return node.operatorToken.kind === ts.SyntaxKind.AmpersandAmpersandToken ? shownBy(node.right) : [];
}

const components = filesOf(/\.tsx$/);

test('the search finds what it is for', () => {
  const example = `const a = <p title="Say so">{x ? 'one word' : t('id')} two {\`\${n} goes\`}</p>;`;
  expect(literalsIn('example.tsx', example)).toEqual(['1: Say so', '1: one word', '1: two', '1: goes']);
  expect(literalsIn('example.tsx', `<p class="note">{t(\`a-\${b}\`)} · {"—"} +½</p>`)).toEqual([]);
  expect(components.length).toBeGreaterThan(20);
});

test.each(components)('%s says nothing that is not in the message files', (file) => {
  expect(literalsIn(file, readFileSync(join(pages, file), 'utf8'))).toEqual([]);
});

/** Without a script a page cannot know the reader's language: it says so in all of them, and its name stays. */
test.each(filesOf(/index\.html$/))('%s says without a script only that it needs one', (file) => {
  const html = readFileSync(join(pages, file), 'utf8');
  const visible = html
    .replace(/<!--[\s\S]*?-->/g, '')
    .replace(/<noscript>[\s\S]*?<\/noscript>/g, '')
    .replace(/<title>Ringledger<\/title>/, '');
  expect(visible.replace(/<[^>]*>/g, '').trim()).toBe('');
  expect(visible).not.toMatch(/\s(?:aria-label|title|placeholder|alt)="[^"]*\p{L}/u);
  for (const said of html.match(/<noscript>[\s\S]*?<\/noscript>/g) ?? []) expect(said).toContain('lang="de"');
});

describe('the ids of words', () => {
  const ids = new Set(
    filesIn('src/web/words', 'en').flatMap((file) =>
      messagesIn(textOf('src/web/words', 'en', file)).map(({ id }) => id),
    ),
  );
  const code = filesOf(/\.tsx?$/).map((file) => ({
    file,
    text: readFileSync(join(pages, file), 'utf8'),
  }));

  test('that are asked for whole are there', () => {
    const asked = code.flatMap(({ file, text }) =>
      [...text.matchAll(/(?<![\w.])(?:words\.)?t\(\s*'([^']+)'/g)].map(([, id = '']) => ({ file, id })),
    );
    expect(asked.length).toBeGreaterThan(50);
    expect(asked.filter(({ id }) => !ids.has(id))).toEqual([]);
  });

  test('that are put together begin and end like some that are there', () => {
    const asked = code.flatMap(({ file, text }) =>
      [...text.matchAll(/(?<![\w.])(?:words\.)?t\(\s*`([^`]+)`/g)].map(([, id = '']) => ({ file, id })),
    );
    const fits = (template: string) => {
      const pattern = new RegExp(`^${template.replaceAll(/\$\{[^}]*\}/g, '.+')}$`);
      return [...ids].some((id) => pattern.test(id));
    };
    expect(asked.filter(({ id }) => !fits(id))).toEqual([]);
  });
});
