export { appendLine, type NewLine } from './append-line.ts';
export type { LineType } from './event-catalogue.ts';
