export { appendLine, type NewLine, takeHead } from './append-line.ts';
export {
  type BrokenLine,
  type ChainFault,
  checkLine,
  firstBreak,
  type KnownKeys,
  type SealedLine,
} from './chain.ts';
export type { LineType } from './event-catalogue.ts';
export { eventDocument } from './event-document.ts';
export { type LiveAccess, liveRoutes } from './live-routes.ts';
export { headOf, readSealedLines } from './read-lines.ts';
export { onBehalfOf, senderNow } from './sender.ts';
