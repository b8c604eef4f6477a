/** The door of the results for what runs without a database: whoever checks a posting on another machine. */
export { type PostingBody, ruleFingerprint } from './posting-body.ts';
export { type MadeOf, recompute } from './recompute.ts';
export { rulingFingerprint } from './ruling-fingerprint.ts';
