export { type Amending, type CardToSign, cardStatement } from './card-statement.ts';
export { PhoneClient, type PhoneRequest } from './phone-client.ts';
export { makePhoneKey, type PhoneKey, type PublicJwk } from './phone-key.ts';
export { type ProofOf, prove } from './prove.ts';
export { signCard } from './sign-card.ts';
