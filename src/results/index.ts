/** The one door of the results. */
export { classStates } from './class-state.ts';
export { readBoardLines } from './read-board.ts';
export { type PostedResult, readEntryResult, readPostedResult } from './read-result.ts';
export { resultRoutes } from './routes.ts';
export { entryAnswer } from './schemas.ts';
