/** The whole document of a rendered page: nothing in it runs but the script that it names. */
import { renderToString } from 'preact-render-to-string';
import type { PageAssets } from '../platform/http/built-pages.ts';
import type { Choices } from '../web/shared/choices.ts';
import type { Address, Given, PublicPage } from '../web/shared/public-page.ts';
import { type Words, WordsContext } from '../web/shared/words.tsx';

export interface DocumentToWrite {
  readonly page: PublicPage;
  readonly given: Given;
  readonly address: Address;
  readonly words: Words;
  readonly choices: Choices;
  readonly assets: PageAssets;
}

export function htmlDocument(document: DocumentToWrite): string {
  const { words, choices, assets, page, address, given } = document;
  return `<!doctype html>${renderToString(
    <html lang={choices.language} data-theme={choices.theme}>
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1, viewport-fit=cover" />
        <meta name="robots" content="noindex" />
        <title>{page.title(given, words)}</title>
        {assets.styles.map((file) => (
          <link key={file} rel="stylesheet" href={file} />
        ))}
        {assets.preloads.map((file) => (
          <link key={file} rel="modulepreload" href={file} />
        ))}
        {assets.script !== undefined && <script type="module" src={assets.script} />}
      </head>
      <body>
        <div id="page">
          <WordsContext.Provider value={words}>
            <page.View given={given} address={address} />
          </WordsContext.Provider>
        </div>
        <script
          id="given"
          type="application/json"
          // JSON, which the escaping of HTML would break; `safeJson` lets nothing end the element.
          dangerouslySetInnerHTML={{ __html: safeJson({ page: page.name, address, given }) }}
        />
      </body>
    </html>,
  )}`;
}

/** No `<` is left in it, so nothing in a name can end the element (HTML, 4.12.1.3). */
const safeJson = (value: unknown): string => JSON.stringify(value).replaceAll('<', '\\u003c');
