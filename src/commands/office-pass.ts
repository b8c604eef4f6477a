/** `npm run --silent office-pass [-- --hours 12]`: prints a pass of the office, while the service runs or before. */
import { parseArgs } from 'node:util';
import { readConfig } from '../config.ts';
import { startParts } from '../platform/start-parts.ts';
import { issueServicePass } from './service-pass.ts';

const say = (line: string) => console.error(line);
const longestHours = 24 * 30;

async function main(): Promise<void> {
  const { values } = parseArgs({ options: { hours: { type: 'string', default: '72' } } });
  const hours = Number(values.hours);
  if (!Number.isInteger(hours) || hours < 1 || hours > longestHours) {
    throw new Error(`--hours: a whole number from 1 to ${longestHours}, not ${values.hours}`);
  }
  const { parts, stop } = await startParts(readConfig(process.env), say);
  try {
    console.log(await issueServicePass(parts, { label: 'Office of the service', hours }));
  } finally {
    await stop();
  }
}

main().catch((error: unknown) => {
  say(error instanceof Error ? error.message : String(error));
  process.exitCode = 1;
});
