export { mustBreakTies } from './card-record.ts';
export { type CardOrder, contentSchema, goSchema, orderSchema } from './card-schemas.ts';
export { cardRoutes } from './routes.ts';
export { type SignedCard, type SignedCards, signedCards } from './signed-cards.ts';
