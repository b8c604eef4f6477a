/** The whole document of a rendered page: nothing in it runs but the script that it names. */
import { renderToString } from 'preact-render-to-string';
import type { PageAssets } from '../platform/http/built-pages.ts';
import type { Choices } from '../web/shared/choices.ts';
import { ChoicesContext } from '../web/shared/choices-links.tsx';
import type { PublicPage, Rendered } from '../web/shared/public-page.ts';
import { type Words, WordsContext } from '../web/shared/words.tsx';

export interface DocumentToWrite {
  readonly page: PublicPage;
  readonly rendered: Rendered;
  readonly words: Words;
  readonly choices: Choices;
  readonly assets: PageAssets;
}

export function htmlDocument(document: DocumentToWrite): string {
  const { words, choices, page, rendered } = document;
  const { given, address } = rendered;
  return `<!doctype html>${renderToString(
    <html lang={choices.language} data-theme={choices.theme}>
      <Head {...document} />
      <body>
        <div id="page">
          <WordsContext.Provider value={words}>
            <ChoicesContext.Provider value={choices}>
              <page.View given={given} address={address} />
            </ChoicesContext.Provider>
          </WordsContext.Provider>
        </div>
        <script
          id="given"
          type="application/json"
          // JSON, which the escaping of HTML would break; `safeJson` lets nothing end the element.
          dangerouslySetInnerHTML={{ __html: safeJson(rendered) }}
        />
      </body>
    </html>,
  )}`;
}

function Head({ page, rendered: { given }, words, choices, assets }: DocumentToWrite) {
  const title = page.title(given, words);
  const description = page.description?.(given, words);
  const icon = assets.addressOf('shared/icon.svg');
  const wordFiles = ['shared', ...page.topics].flatMap(
    (topic) => assets.addressOf(`words/${choices.language}/${topic}.ftl?raw`) ?? [],
  );
  return (
    <head>
      <meta charset="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1, viewport-fit=cover" />
      <meta name="robots" content="noindex" />
      <title>{title}</title>
      <meta property="og:title" content={title} />
      {description !== undefined && <meta name="description" content={description} />}
      {description !== undefined && <meta property="og:description" content={description} />}
      {icon !== undefined && <link rel="icon" type="image/svg+xml" href={icon} />}
      {assets.styles.map((file) => (
        <link key={file} rel="stylesheet" href={file} />
      ))}
      {[...assets.preloads, ...wordFiles].map((file) => (
        <link key={file} rel="modulepreload" href={file} />
      ))}
      {assets.script !== undefined && <script type="module" src={assets.script} />}
    </head>
  );
}

/** No `<` is left in it, so nothing in a name can end the element (HTML, 4.12.1.3). */
const safeJson = (value: unknown): string => JSON.stringify(value).replaceAll('<', '\\u003c');
