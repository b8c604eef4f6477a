/** The door of the ledger for what runs without a database. */
export { type ChainFault, checkLine, type KnownKeys, type SealedLine } from './chain.ts';
