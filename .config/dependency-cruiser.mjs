/** Who may import whom. Each rule opens with its reason; `npm run imports` checks them all. */

const features = ['office', 'cards', 'results', 'look-up', 'queries', 'archive', 'seasons'];

/** Results never write cards, seasons never write results: a feature knows only those to its left. */
const oneWay = features.map((feature, at) => ({
  name: `${feature}-looks-only-left`,
  comment:
    'A mark flows one way: office, cards, results, archive, seasons. Nothing flows back up, so that no result can change a card.',
  severity: 'error',
  from: { path: `^src/${feature}/` },
  to: { path: `^src/(${[...features.slice(at + 1), 'documents', 'web', 'commands'].join('|')})/` },
}));

/**
 * A feature is entered by its one door, `index.ts`, so that what is behind it may change. What runs without a database
 * (the verifier) enters by `offline.ts`, which opens to the pure part of the room alone.
 */
const oneDoor = [...features, 'access', 'ledger', 'language'].map((room) => ({
  name: `${room}-has-one-door`,
  comment:
    'A room is entered by its index.ts (or offline.ts, where there is no database), so that what is behind it can ' +
    'change without anybody noticing.',
  severity: 'error',
  from: { path: '^src/', pathNot: `^src/${room}/` },
  to: { path: `^src/${room}/`, pathNot: `^src/${room}/(index|offline)\\.ts$` },
}));

/** Numbers, sheets, placing, points: each reads only what stands to its left. */
const engineOrder = ['numbers', 'sheets', 'placing', 'points'];
const leftToRight = engineOrder.map((room, at) => ({
  name: `engine-${room}-reads-left`,
  comment:
    'In the engine numbers know nothing of sheets, sheets nothing of placing, placing nothing of points.',
  severity: 'error',
  from: { path: `^src/engine/${room}/` },
  to: { path: `^src/engine/(${[...engineOrder.slice(at + 1), 'agreement', 'sentences'].join('|')})/` },
}));

export default {
  forbidden: [
    {
      name: 'engine-is-pure',
      comment:
        'The engine runs the same in the server, on the phone and in the verifier: no clock, no randomness, no I/O, ' +
        'no framework. It may use exact fractions and a hash, and nothing else.',
      severity: 'error',
      from: { path: '^src/engine/', pathNot: '^src/engine/sentences/' },
      to: { pathNot: '^(src/engine/|node_modules/fraction\\.js/|node_modules/@noble/hashes/)' },
    },
    {
      name: 'sentences-are-pure',
      comment:
        'Sentences are told on the phone as at the service, in every language: they may use Fluent, which turns a message ' +
        'and its arguments into text and does nothing else. The text of the message files comes from outside.',
      severity: 'error',
      from: { path: '^src/engine/sentences/' },
      to: { pathNot: '^(src/engine/|node_modules/fraction\\.js/|node_modules/@fluent/bundle/)' },
    },
    {
      name: 'evidence-is-portable',
      comment:
        'What is signed is spelled the same on the phone, at the service and by the verifier: the forms of evidence need ' +
        "nothing of either, only the engine's types, canonical JSON, and libraries for JOSE and UUIDs that run everywhere.",
      severity: 'error',
      from: { path: '^src/evidence/' },
      to: { pathNot: '^(src/(evidence|engine)/|node_modules/(jose|canonicalize|uuid)/)' },
    },
    {
      name: 'phone-is-portable',
      comment:
        'What a phone does runs in a browser, in the demo and in tests: nothing of the service may come with it.',
      severity: 'error',
      from: { path: '^src/phone/' },
      to: { pathNot: '^(src/(phone|evidence)/|node_modules/jose/)' },
    },
    ...leftToRight,
    {
      name: 'sentences-make-prose-only',
      comment:
        'Codes first, words last: only the type of a reason is read to make a sentence, nothing is computed.',
      severity: 'error',
      from: { path: '^src/engine/(?!sentences/)' },
      to: { path: '^src/engine/sentences/' },
    },
    ...oneWay,
    ...oneDoor,
    {
      name: 'verifier-has-no-database',
      comment:
        'Whoever checks an archive has no database and no service: the verifier enters each room by offline.ts.',
      severity: 'error',
      from: { path: '^src/(archive/(form|verify|offline)|commands/verify|[a-z]+/offline\\.ts)' },
      to: {
        path: '^src/(platform/(database|sql|generated)|archive/(export|import|stored)|[a-z]+/index\\.ts)',
        pathNot: '^src/(evidence|platform/problems)/index\\.ts$',
        dependencyTypesNot: ['type-only'],
      },
    },
    {
      name: 'platform-knows-no-feature',
      comment: 'The platform carries every feature, so it can know none of them.',
      severity: 'error',
      from: { path: '^src/platform/' },
      to: {
        path: '^src/(engine|office|cards|results|archive|seasons|access|ledger|documents|web|commands)/',
      },
    },
    {
      name: 'ledger-knows-no-feature',
      comment: 'Every feature appends to the ledger, so the ledger can know none of them.',
      severity: 'error',
      from: { path: '^src/ledger/' },
      to: { path: '^src/(engine|office|cards|results|archive|seasons|access|documents|web|commands)/' },
    },
    {
      name: 'only-the-top-sees-all',
      comment: 'The app is built and started at the top; a room that imported it would go round in a circle.',
      severity: 'error',
      from: { path: '^src/.+/', pathNot: '^src/commands/' },
      to: { path: '^src/(app|main)\\.ts$' },
    },
    {
      name: 'web-runs-in-a-browser',
      comment:
        'A page has no database and no files: it reads what runs anywhere (engine, evidence, phone), and asks the API for the rest.',
      severity: 'error',
      from: { path: '^src/web/' },
      to: { path: '^src/', pathNot: '^src/(web|engine|evidence|phone)/' },
    },
    {
      name: 'pages-render-public-views',
      comment:
        'The pages that the service renders ask its own public API and show the views of the browser: no feature behind them.',
      severity: 'error',
      from: { path: '^src/pages/' },
      to: {
        path: '^src/',
        pathNot: '^src/(pages|platform/http|web/(board|exhibitor|shared))/|^src/access/index',
      },
    },
    {
      name: 'only-pages-and-browsers-show-views',
      comment: 'A view is shown by a browser, or rendered by src/pages/; no other room knows of pages.',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/(pages|web)/' },
      to: { path: '^src/web/' },
    },
    {
      name: 'no-circles',
      comment: 'Two files that need each other are one file, or hide a third.',
      severity: 'error',
      from: { pathNot: '/generated/' },
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'nothing-unlisted',
      comment: 'A package that package.json does not name is there by luck and may go with the next update.',
      severity: 'error',
      from: { pathNot: '/generated/' },
      to: { dependencyTypes: ['npm-no-pkg', 'npm-unknown'] },
    },
    {
      name: 'shipped-code-needs-no-test-tool',
      comment: 'The service is installed without development packages.',
      severity: 'error',
      from: { path: '^src/' },
      to: {
        dependencyTypes: ['npm-dev'],
        dependencyTypesNot: ['type-only'],
        pathNot: 'node_modules/@types/',
      },
    },
  ],
  options: {
    doNotFollow: { path: ['node_modules', 'src/platform/generated'] },
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'node', 'default'],
      extensions: ['.ts', '.tsx', '.js', '.mjs', '.json'],
    },
  },
};
