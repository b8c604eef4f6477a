/** Each score sheet is the one that its fingerprint names; cards and postings name that. */
import { fingerprint } from '../../platform/canonical-json.ts';
import { type Fault, fault } from './fault.ts';
import type { Reading } from './reading.ts';

export function checkSheets({ archive }: Reading): Fault[] {
  return archive.sheets
    .filter(({ definition, hash, code, version }) => {
      const namesItself = definition.code === code && definition.version === version;
      return !namesItself || fingerprint(definition) !== hash;
    })
    .map(({ code, version }) => fault('sheet_altered', `sheet ${code} version ${version}`));
}
