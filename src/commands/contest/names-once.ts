/** JSON keeps the last of two members of one name and forgets the first: an entry would be lost without a word. */
import { visit } from 'jsonc-parser';

export interface NameFault {
  readonly path: readonly (string | number)[];
  readonly fault: string;
}

/** The first name that stands in one object twice, or that JavaScript keeps for itself. `text` is valid JSON. */
export function repeatedName(text: string): NameFault | undefined {
  const open: Set<string>[] = [];
  let found: NameFault | undefined;
  visit(text, {
    onObjectBegin: () => {
      open.push(new Set());
    },
    onObjectEnd: () => {
      open.pop();
    },
    onObjectProperty: (name, _offset, _length, _line, _character, around) => {
      const names = open.at(-1);
      if (names?.has(name)) found ??= { path: [...around(), name], fault: 'it stands in it twice' };
      else if (name === '__proto__')
        found ??= { path: [...around(), name], fault: 'no entry can be called so' };
      names?.add(name);
    },
  });
  return found;
}
