/** Ours and a yardstick in turns, in the same run: what a machine is doing beside it strikes both alike. */

export interface Pair {
  readonly name: string;
  readonly yardstickName: string;
  readonly ours: () => unknown;
  readonly yardstick: () => unknown;
  /** Turns that are counted; as many again, at most five, go before them to warm up. */
  readonly turns: number;
  /** Calls of each in one turn. */
  readonly calls?: { readonly ours: number; readonly yardstick: number };
}

export interface Compared {
  readonly name: string;
  readonly yardstickName: string;
  readonly turns: number;
  /** Milliseconds of one call, median over the turns. */
  readonly oursMs: number;
  readonly yardstickMs: number;
  readonly ratio: number;
  /** The ratio of the turns: a quarter of them lies below, a quarter above. */
  readonly quartiles: readonly [number, number];
}

export async function compare(pair: Pair): Promise<Compared> {
  const { name, yardstickName, turns, calls = { ours: 1, yardstick: 1 } } = pair;
  const measured: { ours: number; yardstick: number }[] = [];
  const warmUp = Math.min(5, turns);
  for (let turn = -warmUp; turn < turns; turn += 1) {
    const ours = await millisecondsPerCall(pair.ours, calls.ours);
    const yardstick = await millisecondsPerCall(pair.yardstick, calls.yardstick);
    if (turn >= 0) measured.push({ ours, yardstick });
  }
  const ratios = measured.map(({ ours, yardstick }) => ours / yardstick);
  return {
    name,
    yardstickName,
    turns,
    oursMs: quantile(
      measured.map(({ ours }) => ours),
      0.5,
    ),
    yardstickMs: quantile(
      measured.map(({ yardstick }) => yardstick),
      0.5,
    ),
    ratio: quantile(ratios, 0.5),
    quartiles: [quantile(ratios, 0.25), quantile(ratios, 0.75)],
  };
}

async function millisecondsPerCall(work: () => unknown, calls: number): Promise<number> {
  const begun = performance.now();
  for (let call = 0; call < calls; call += 1) {
    const answer = work();
    if (answer instanceof Promise) await answer;
  }
  return (performance.now() - begun) / calls;
}

export function quantile(values: readonly number[], at: number): number {
  const ordered = [...values].sort((a, b) => a - b);
  return ordered[Math.min(ordered.length - 1, Math.floor(at * ordered.length))] ?? Number.NaN;
}

const duration = (milliseconds: number) =>
  milliseconds >= 1_000 ? `${digits(milliseconds / 1_000)} s` : `${digits(milliseconds)} ms`;

const digits = (value: number) => (value >= 1_000 ? String(Math.round(value)) : value.toPrecision(3));

export function printTable(title: string, how: string, rows: readonly Compared[]): void {
  console.log(`\n${title}\n${how}\n`);
  const cells = rows.map((row) => [
    row.name,
    duration(row.oursMs),
    row.yardstickName,
    duration(row.yardstickMs),
    digits(row.ratio),
    `${digits(row.quartiles[0])} .. ${digits(row.quartiles[1])}`,
    String(row.turns),
  ]);
  const head = ['measured', 'median', 'yardstick', 'median', 'ratio', 'quartiles', 'n'];
  const widths = head.map((text, column) =>
    Math.max(text.length, ...cells.map((row) => row[column]?.length ?? 0)),
  );
  const line = (row: readonly string[]) =>
    row.map((text, column) => text.padEnd(widths[column] ?? 0)).join('  ');
  for (const row of [head, widths.map((width) => '-'.repeat(width)), ...cells])
    console.log(`  ${line(row)}`.trimEnd());
}
