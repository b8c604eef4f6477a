/** OpenAPI 3.1 out of the routes' zod schemas: at `/openapi.json`, browsable at `/docs`. */
import swagger from '@fastify/swagger';
import type { FastifyInstance } from 'fastify';
import { jsonSchemaTransform, jsonSchemaTransformObject } from 'fastify-type-provider-zod';
import type { App } from '../app-parts.ts';
import { problemMediaType } from '../http/problem-answers.ts';
import { policyOfPage } from '../http/security-headers.ts';
import { errorPage } from './error-page.ts';

/** Must be registered before the routes that it describes. */
export async function describeRoutes(app: App): Promise<void> {
  await app.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: {
        title: 'Ringledger',
        version: '1',
        description:
          'Shows, classes, panels, entries, cards and results. Marks are texts such as "71.5". Every refusal is ' +
          'a problem (RFC 9457) with a stable code. Ringledger records and adds up; it does not rule.',
        license: { name: 'Apache-2.0', identifier: 'Apache-2.0' },
      },
      components: {
        securitySchemes: {
          session: { type: 'http', scheme: 'bearer', description: 'The token of POST /v1/sessions.' },
          phone: {
            ...{ type: 'http', scheme: 'DPoP' },
            description: 'The token of POST /v1/phone-tokens, with a proof in the header DPoP (RFC 9449).',
          },
        },
      },
      security: [{ session: [] }, { phone: [] }, {}],
    },
    transform: jsonSchemaTransform,
    transformObject: jsonSchemaTransformObject,
  });
  app.get('/openapi.json', { schema: { hide: true } }, async (_request, reply) =>
    reply.type('application/json').send(JSON.stringify(openApiOf(app))),
  );
  app.get('/docs/errors', { schema: { hide: true } }, async (_request, reply) =>
    reply.type('text/html; charset=utf-8').send(errorPage()),
  );
}

/** The page at `/docs`. Its script is large, so it is loaded only where the page is wanted. */
export async function browseRoutes(app: App): Promise<void> {
  const { default: reference } = await import('@scalar/fastify-api-reference');
  await app.register(async (scope: FastifyInstance) => {
    scope.addHook('onSend', async (_request, reply, html) => {
      if (typeof html === 'string')
        reply.header('content-security-policy', policyOfPage({ html, writesStyle: true }));
    });
    await scope.register(reference, {
      routePrefix: '/docs',
      configuration: {
        url: '/openapi.json',
        withDefaultFonts: false,
        telemetry: false,
        pageTitle: 'Ringledger',
        // Nothing on the page may lead the records of a show to someone else's service.
        agent: { disabled: true },
        mcp: { disabled: true },
        hideClientButton: true,
        showDeveloperTools: 'never',
        hiddenClients: { ruby: true, php: true, python: true },
      },
    });
  });
}

type Document = Readonly<Record<string, unknown>> & {
  readonly components?: Readonly<Record<string, unknown>> & {
    readonly schemas?: Readonly<Record<string, unknown>>;
  };
  readonly paths?: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
};
interface Operation {
  readonly responses?: Readonly<Record<string, Answer>>;
}
interface Answer {
  readonly content?: Readonly<Record<string, unknown>>;
}

/** The same bytes for the same routes, whatever was loaded first: addresses and schemas in order, problems under their own media type. */
export function openApiOf(app: App): Document {
  const { servers: _none, ...described } = app.swagger() as unknown as Document;
  const { schemas = {}, ...components } = described.components ?? {};
  const paths = Object.entries(described.paths ?? {}).map(
    ([path, item]) => [path, withProblems(item)] as const,
  );
  return {
    ...described,
    components: { ...components, schemas: inOrder(Object.entries(schemas)) },
    paths: inOrder(paths),
  };
}

function inOrder<Value>(named: readonly (readonly [string, Value])[]): Record<string, Value> {
  return Object.fromEntries([...named].sort(([a], [b]) => (a < b ? -1 : 1)));
}

function withProblems(item: Readonly<Record<string, Operation>>): Record<string, Operation> {
  const entries = Object.entries(item).map(([method, operation]) => {
    const answers = Object.entries(operation.responses ?? {}).map(([status, answer]) => [
      status,
      Number(status) >= 400 ? asProblem(answer) : answer,
    ]);
    return [method, { ...operation, responses: Object.fromEntries(answers) }];
  });
  return Object.fromEntries(entries);
}

function asProblem(answer: Answer): Answer {
  const body = answer.content?.['application/json'];
  return body === undefined ? answer : { ...answer, content: { [problemMediaType]: body } };
}
