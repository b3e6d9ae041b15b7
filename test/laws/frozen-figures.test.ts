/**
 * What the seasons of the demonstration plans and of 500 random ones came to before the code was rebuilt (commit 887c042): whoever moves or
 * renames code moves no figure. `frozen/freeze.ts` writes them.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { digestsOf, type Sums, unpacked } from './frozen/frozen-seasons.ts';
import { type Pins, pinOf } from './frozen/season-digest.ts';

const seasons = unpacked(readFileSync(new URL('./frozen/frozen-seasons.jsonl.br', import.meta.url)));
const demos = seasons.filter(({ zones }) => zones.length > 0);
const random = seasons.filter(({ zones }) => zones.length === 0);

/** Of the sum of all parts: what another order of the same additions may change. */
const ROUNDING = 1e-12;

/** Figures that have another name since: what they come to is the same. */
const RENAMED: ReadonlyMap<string, string> = new Map([['hand-set calculatedMinutes', 'hand-set computedMinutes']]);

/** Sums that are not as they were, or no longer there, in words. */
function movedSums(now: Pins, frozen: Sums): readonly string[] {
  return [...frozen].flatMap(([name, before]) => {
    const pin = now.get(RENAMED.get(name) ?? name);
    if (pin === undefined) return [`${name} is gone`];
    const isSame = Object.is(pin.sum, before) || Math.abs(pin.sum - before) <= ROUNDING * pin.scale;
    return isSame ? [] : [`${name}: ${before} became ${pin.sum}`];
  });
}

function expectAsFrozen({ name, plan, exact, season, zones }: (typeof seasons)[number]): void {
  const now = digestsOf(plan, zones.length > 0);
  const moved = [
    ...movedSums(now.season, season),
    ...zones.flatMap((sums, index) => movedSums(now.zones[index] ?? new Map(), sums)),
  ];
  expect({ name, moved, exact: now.exact }).toEqual({ name, moved: [], exact });
  expect(now.zones).toHaveLength(zones.length);
}

describe('the figures of the season', () => {
  it('are frozen for every demonstration plan and 500 random ones', () => {
    expect(demos).toHaveLength(5);
    expect(random).toHaveLength(500);
  });

  it.each(demos)('of $name are as they were', expectAsFrozen);

  const hundreds = [0, 1, 2, 3, 4].map((hundred) => random.slice(100 * hundred, 100 * hundred + 100));
  it.each(hundreds)('of random plans are as they were', { timeout: 120_000 }, (...plans) => {
    plans.forEach(expectAsFrozen);
  });

  it('would be missed where one moved, or two weeks changed places', () => {
    const now = new Map([['zone litres', pinOf([3, 5, 8])]]);
    const frozen = (values: readonly number[]) => new Map([['zone litres', pinOf(values).sum]]);
    expect(movedSums(now, frozen([3, 5, 8]))).toEqual([]);
    expect(movedSums(now, frozen([3, 5, 8 * (1 + 1e-11)]))).toHaveLength(1);
    expect(movedSums(now, frozen([5, 3, 8]))).toHaveLength(1);
    expect(movedSums(new Map(), frozen([3, 5, 8]))).toEqual(['zone litres is gone']);
  });
});
