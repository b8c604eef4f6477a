/** Which screen stands at which address below /office. The first that fits is shown. */
import type { ComponentType } from 'preact';
import { AccountScreen } from './access/account-screen.tsx';
import { AccountsScreen } from './accounts/accounts-screen.tsx';
import { ClassScreen } from './class/class-screen.tsx';
import { ClosenessScreen } from './closeness/closeness-screen.tsx';
import { DayScreen } from './day/day-screen.tsx';
import { ClassEntriesScreen } from './entries/class-entries-screen.tsx';
import { EntriesScreen } from './entries/entries-screen.tsx';
import { EntryScreen } from './entries/entry-screen.tsx';
import { LateEntryScreen } from './entries/late-entry-screen.tsx';
import { LedgerScreen } from './ledger/ledger-screen.tsx';
import { PanelScreen } from './panel/panel-screen.tsx';
import { ClassPaperScreen } from './paper/class-paper-screen.tsx';
import { PaperCardScreen } from './paper/paper-card-screen.tsx';
import { PhonesScreen } from './phones/phones-screen.tsx';
import { QueriesScreen } from './queries/queries-screen.tsx';
import { ShowsScreen } from './shows/shows-screen.tsx';

/** `'/shows/:showId/x'` -> `{ showId: string }` */
export type ParamsOf<Path extends string> = Path extends `${string}:${infer Name}/${infer Rest}`
  ? { readonly [Key in Name]: string } & ParamsOf<Rest>
  : Path extends `${string}:${infer Name}`
    ? { readonly [Key in Name]: string }
    : unknown;

export interface ScreenAt {
  readonly path: string;
  readonly Screen: ComponentType<Record<string, string>>;
}

/** The names in the address are the props of the screen, all of them text. */
const at = <Path extends string>(path: Path, Screen: ComponentType<ParamsOf<Path>>): ScreenAt => ({
  path,
  Screen: Screen as unknown as ScreenAt['Screen'],
});

export const screens: readonly ScreenAt[] = [
  at('/', ShowsScreen),
  at('/account', AccountScreen),
  at('/accounts', AccountsScreen),
  at('/shows/:showId', DayScreen),
  at('/shows/:showId/phones', PhonesScreen),
  at('/shows/:showId/ledger', LedgerScreen),
  at('/shows/:showId/classes/:classId', ClassScreen),
  at('/shows/:showId/classes/:classId/panel', PanelScreen),
  at('/shows/:showId/classes/:classId/closeness', ClosenessScreen),
  at('/shows/:showId/entries', EntriesScreen),
  at('/shows/:showId/entries/new', LateEntryScreen),
  at('/shows/:showId/entries/:entryId', EntryScreen),
  at('/shows/:showId/classes/:classId/entries', ClassEntriesScreen),
  at('/shows/:showId/queries', QueriesScreen),
  at('/shows/:showId/paper/:paperCardId', PaperCardScreen),
  at('/shows/:showId/classes/:classId/paper', ClassPaperScreen),
];

/** Files of words that the screens need, from `src/web/words/<language>/`. */
export const topics = [
  'shared',
  'problems',
  'office',
  'office-class',
  'office-ledger',
  'office-queries',
  'office-paper',
  'office-closeness',
  'office-entries',
];
