/** The door of the office for what runs without a database. */

export { isGoing } from './class-entries/status.ts';
export { videoAddress } from './class-entries/video-address.ts';
export { spokenAs } from './exhibitors/spoken-as.ts';
export { patternDrawing } from './patterns/drawing-schema.ts';
export { placingRule } from './schemas/placing-rule.ts';
export { code, scoreSheet } from './schemas/score-sheet.ts';
export { coneLetter, nameText, wording } from './schemas/text.ts';
