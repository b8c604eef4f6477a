/** Which classes still take an entry: until a card of theirs is signed. The service looks again. Pure. */

interface BoardClass {
  readonly state: string;
  readonly cardsIn: number;
}

const stillOpen = ['setting-up', 'drawn', 'called', 'under-way'];

export const takesEntries = ({ state, cardsIn }: BoardClass): boolean =>
  stillOpen.includes(state) && cardsIn === 0;
