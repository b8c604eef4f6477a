/** The door of the cards for what runs without a database. */
export { contentSchema } from './card-schemas.ts';
export { hashWithSalt } from './paper/hash-with-salt.ts';
