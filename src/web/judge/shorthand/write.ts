/** Writes shorthand: what it writes is read as the same again, in every language. */
import type { Item } from './types.ts';

/** `signed`: marks go up and down from a base and show a plus. */
export function writeShorthand(items: readonly Item[], { signed }: { readonly signed: boolean }): string {
  return items
    .map((item, index) => {
      const between = index === 0 ? '' : item.kind.startsWith('penalty') ? ' ' : ', ';
      return between + itemText(item, signed);
    })
    .join('');
}

function itemText(item: Item, signed: boolean): string {
  switch (item.kind) {
    case 'mark':
      return signed && item.mark !== '0' && !item.mark.startsWith('-') ? `+${item.mark}` : item.mark;
    case 'not-seen':
      return 'ns';
    case 'penalty':
      return `p${item.points}${item.letter ?? ''}`;
    case 'penalty-called':
      return `p ${item.words}`;
    case 'form':
      return `f${item.mark}`;
  }
}
