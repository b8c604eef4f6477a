export { type ProblemCode, problemCatalogue } from './catalogue.ts';
export { type FieldFault, Problem, type ProblemDetails, problem } from './problem.ts';
