export { announceKeys, strangeKeys } from './announce-keys.ts';
export { appendLine, type NewLine, takeHead } from './append-line.ts';
export {
  type BrokenLine,
  type ChainFault,
  firstBreak,
  type KnownKeys,
  type SealedLine,
} from './chain.ts';
export type { LineType } from './event-catalogue.ts';
export { eventDocument } from './event-document.ts';
export { type LiveAccess, liveRoutes } from './live-routes.ts';
export { readSealedLines } from './read-lines.ts';
export { type ReadAccess, readRoutes } from './read-routes.ts';
export { type RefusalAccess, recordRefusals } from './refusals.ts';
export { recordedRefusals } from './refusals-recorded.ts';
export { onBehalfOf } from './sender.ts';
