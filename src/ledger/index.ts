export { appendLine, type NewLine } from './append-line.ts';
export type { LineType } from './event-catalogue.ts';
export { eventDocument } from './event-document.ts';
export { type LiveAccess, liveRoutes } from './live-routes.ts';
