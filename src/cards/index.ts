export { cardRoutes } from './routes.ts';
export { type SignedCard, type SignedCards, signedCards } from './signed-cards.ts';
