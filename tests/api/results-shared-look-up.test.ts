/** Many readers of one posted result share a look-up, and none of them is told what was true before she asked. */
import { describe, expect, it } from 'vitest';
import { SharedLookUp } from '../../src/results/shared-look-up.ts';

/** Look-ups that end when the test says so. */
function heldLookUps() {
  const begun: { key: string; end: (found: string) => void; fail: (error: Error) => void }[] = [];
  const shared = new SharedLookUp<string>(
    (key) => new Promise((end, fail) => begun.push({ key, end, fail })),
  );
  return { begun, shared };
}

const settled = () => new Promise((done) => setImmediate(done));

describe('a look-up that many ask for', () => {
  it('is made once for all who ask while another is under way, after that one has ended', async () => {
    const { begun, shared } = heldLookUps();
    const first = shared.ask('class 1');
    const others = [shared.ask('class 1'), shared.ask('class 1'), shared.ask('class 1')];
    await settled();
    expect(begun).toHaveLength(1);
    begun[0]?.end('before the correction');
    await settled();
    expect(begun).toHaveLength(2);
    begun[1]?.end('after the correction');
    expect(await first).toBe('before the correction');
    expect(await Promise.all(others)).toEqual(Array(3).fill('after the correction'));
  });

  it('begins at once for another class', async () => {
    const { begun, shared } = heldLookUps();
    const asked = [shared.ask('class 1'), shared.ask('class 2')];
    expect(begun.map(({ key }) => key)).toEqual(['class 1', 'class 2']);
    for (const { key, end } of begun) end(key);
    expect(await Promise.all(asked)).toEqual(['class 1', 'class 2']);
  });

  it('that failed fails those who asked for it, and not the next', async () => {
    const { begun, shared } = heldLookUps();
    const first = shared.ask('class 1');
    const second = shared.ask('class 1');
    begun[0]?.fail(new Error('no connection'));
    await expect(first).rejects.toThrow('no connection');
    await settled();
    begun[1]?.end('found');
    expect(await second).toBe('found');
    const third = shared.ask('class 1');
    begun[2]?.end('found again');
    expect(await third).toBe('found again');
  });
});
