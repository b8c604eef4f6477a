/** What the service answers, as types: made from its OpenAPI document by `.config/prepare.mjs`, never spelled again. */
import type { components, paths } from './generated/api.ts';

type Good<Operation> = Operation extends {
  responses: { 200: { content: { 'application/json': infer Body } } };
}
  ? Body
  : Operation extends { responses: { 201: { content: { 'application/json': infer Body } } } }
    ? Body
    : never;

/** Body of a good answer: `Answer<'/v1/shows/{showId}/board'>`, `Answer<'/v1/sessions', 'post'>`. */
export type Answer<
  Path extends keyof paths,
  Method extends 'get' | 'post' | 'put' | 'patch' | 'delete' = 'get',
> = Good<paths[Path][Method]>;

/** A named part of answers: `Part<'Card'>`. */
export type Part<Name extends keyof components['schemas']> = components['schemas'][Name];
