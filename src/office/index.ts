import type { FeatureRoutes } from '../platform/app-parts.ts';
import { classEntryRoutes } from './class-entries/routes.ts';
import { classRoutes } from './classes/routes.ts';
import { consentRoutes } from './consents/routes.ts';
import { entryRoutes } from './entries/routes.ts';
import { erasureRoutes } from './exhibitors/erasure-routes.ts';
import { exhibitorRoutes } from './exhibitors/routes.ts';
import { namedRecordRoutes } from './named/routes.ts';
import { orderRoutes } from './order/routes.ts';
import { panelRoutes } from './panel/routes.ts';
import { publicPatternRoutes } from './patterns/public-pattern.ts';
import { patternRoutes } from './patterns/routes.ts';
import { rehearsalRoutes } from './rehearsals/routes.ts';
import { relationRoutes } from './relations/routes.ts';
import { scoreSheetRoutes } from './sheets/routes.ts';
import { showRoutes } from './shows/routes.ts';

export { type ClassEntryStatus, isGoing } from './class-entries/status.ts';
export { eraseQueryWords } from './exhibitors/query-words.ts';
export { changed, created, once } from './once.ts';
export { patternBody } from './patterns/pattern-schemas.ts';
export { readPublicPattern } from './patterns/public-pattern.ts';
export { wording } from './schemas/text.ts';
export { addScoreSheet } from './sheets/add-score-sheet.ts';
export { addBundledSheets } from './sheets/bundled-sheets.ts';
export { isPractice, shownName } from './shows/show-schemas.ts';
export {
  type LoadedClass,
  type LoadedEntry,
  type LoadedSeat,
  loadClass,
} from './store/load-class.ts';
export { lockOpenClass } from './store/locks.ts';
export { type PublicEntry, publicEntries, spokenNotes } from './store/public-entries.ts';
export { publicEntriesOfShow, type ShowEntry } from './store/show-entries.ts';

/** All routes of the show office, below `/v1`. */
export const officeRoutes: FeatureRoutes = async (app, options) => {
  const features = [
    showRoutes,
    rehearsalRoutes,
    namedRecordRoutes,
    scoreSheetRoutes,
    patternRoutes,
    publicPatternRoutes,
    classRoutes,
    panelRoutes,
    exhibitorRoutes,
    consentRoutes,
    erasureRoutes,
    entryRoutes,
    classEntryRoutes,
    orderRoutes,
    relationRoutes,
  ];
  for (const feature of features) await feature(app, options);
};
