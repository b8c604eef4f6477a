/** The door of the archives for what runs without a database: the verifier, on any machine. */
export type { Archive } from './form/archive.ts';
export { archiveJsonSchema } from './form/json-schema.ts';
export type { Fault, FaultCode } from './verify/fault.ts';
export { type Asked, type Verified, verifyArchive } from './verify/verify-archive.ts';
