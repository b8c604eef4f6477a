export { type ProblemCode, problemCatalogue } from './catalogue.ts';
export { violatedConstraint } from './database-problems.ts';
export { type FieldFault, Problem, type ProblemDetails, problem } from './problem.ts';
