export { type ProblemCode, problemCatalogue } from './catalogue.ts';
export { type FieldFault, Problem, type ProblemDetails, problem, type Told } from './problem.ts';
