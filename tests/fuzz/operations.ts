/** The operations of an OpenAPI 3.1 document, as far as a sender needs to know them. */

export interface JsonSchema {
  readonly $ref?: string;
  readonly type?: string | readonly string[];
  readonly format?: string;
  readonly pattern?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly JsonSchema[];
  readonly oneOf?: readonly JsonSchema[];
  readonly allOf?: readonly JsonSchema[];
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: boolean | JsonSchema;
  readonly items?: JsonSchema;
  readonly prefixItems?: readonly JsonSchema[];
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly minimum?: number;
  readonly maximum?: number;
}

export interface Parameter {
  readonly name: string;
  readonly in: 'path' | 'query' | 'header' | 'cookie';
  readonly required?: boolean;
  readonly schema: JsonSchema;
}

export interface Operation {
  /** `POST /v1/shows/{showId}/classes` */
  readonly name: string;
  readonly method: string;
  readonly path: string;
  readonly parameters: readonly Parameter[];
  /** Of a JSON body; `undefined` where none is taken. */
  readonly body: JsonSchema | undefined;
  /** What is taken instead of JSON, e.g. image/jpeg. */
  readonly otherBodies: readonly string[];
  /** Statuses that the document names. */
  readonly statuses: readonly number[];
}

interface DocumentedOperation {
  readonly parameters?: readonly Parameter[];
  readonly requestBody?: { readonly content?: Readonly<Record<string, { readonly schema?: JsonSchema }>> };
  readonly responses?: Readonly<Record<string, unknown>>;
}

export interface OpenApi {
  readonly paths: Readonly<Record<string, Readonly<Record<string, DocumentedOperation>>>>;
  readonly components?: { readonly schemas?: Readonly<Record<string, JsonSchema>> };
}

export function operationsOf({ paths }: OpenApi): Operation[] {
  return Object.entries(paths).flatMap(([path, item]) =>
    Object.entries(item).map(([method, documented]) => operationOf(path, method.toUpperCase(), documented)),
  );
}

function operationOf(path: string, method: string, documented: DocumentedOperation): Operation {
  const content = documented.requestBody?.content ?? {};
  return {
    name: `${method} ${path}`,
    method,
    path,
    parameters: documented.parameters ?? [],
    body: content['application/json']?.schema,
    otherBodies: Object.keys(content).filter((type) => type !== 'application/json'),
    statuses: Object.keys(documented.responses ?? {}).map(Number),
  };
}
