/** `npm run bench`: how long things take beside a yardstick in the same run. Timing is no test: nothing fails here. */
import { cpus } from 'node:os';
import { placeClasses } from './place-classes.ts';

const chosen = process.argv.slice(2);
const parts = { placing: placeClasses } as const;

console.log(`Node.js ${process.version}, ${cpus().length} x ${cpus()[0]?.model ?? 'unknown processor'}`);
for (const [name, run] of Object.entries(parts)) {
  if (chosen.length === 0 || chosen.includes(name)) await run();
}
