/** `npm run openapi`: writes the documents of `api-docs/` that come from the code. */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { apiDocuments } from './api-docs.ts';

for (const [name, text] of Object.entries(await apiDocuments())) {
  writeFileSync(fileURLToPath(new URL(`../../api-docs/${name}`, import.meta.url)), text);
  console.error(`api-docs/${name} written`);
}
