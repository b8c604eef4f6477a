/** RFC 9457 problem details, as thrown by the verbs and as sent. */
import type { LineActor } from '../../evidence/index.ts';
import { type ProblemCode, problemCatalogue } from './catalogue.ts';

/** One thing that is wrong in the request. */
export interface FieldFault {
  /** JSON pointer into the body ("/goes/2/maneuvers/0/mark"), or "query/limit", "params/showId", "headers/if-match". */
  readonly field: string;
  readonly message: string | Told;
}

/** A message that is made when it is sent: it gets the header Accept-Language of whoever reads it. */
export type Told = (acceptLanguage: string | undefined) => string;

export interface RefusedPass {
  /** Who used it. */
  readonly actor: LineActor;
  /** The phone that it was made for, where whoever used it does not hold that phone's key. */
  readonly phoneId?: string;
}

export interface ProblemDetails {
  /** What is wrong this time, in a sentence with the numbers and codes that matter; never a person's name. */
  readonly detail?: string;
  readonly errors?: readonly FieldFault[];
  /** Members beside the standard ones, e.g. the ids of open ties. */
  readonly more?: Readonly<Record<string, unknown>>;
  /** Where the door refuses a pass that it knows: whose it was. For the ledger, never answered. */
  readonly refused?: RefusedPass;
  /** Response headers, e.g. Allow. */
  readonly headers?: Readonly<Record<string, string>>;
}

/** An expected refusal: thrown by a verb, it rolls its transaction back and is answered with the code's status. */
export class Problem extends Error {
  readonly code: ProblemCode;
  readonly details: ProblemDetails;

  constructor(code: ProblemCode, details: ProblemDetails = {}) {
    super(details.detail ?? problemCatalogue[code].title);
    this.name = 'Problem';
    this.code = code;
    this.details = details;
  }

  get status(): number {
    return problemCatalogue[this.code].status;
  }
}

/** `throw problem('card_incomplete', { detail, errors: [{ field, message }] })` */
export const problem = (code: ProblemCode, details: ProblemDetails = {}): Problem =>
  new Problem(code, details);
