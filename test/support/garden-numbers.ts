/** Random numbers for gardens. */
import fc from 'fast-check';
import type { SeasonSpan } from '../../src/engine/garden.ts';

/** A number from `low` to `high`, on a grid too crooked to sit on a timer's step by chance. */
export function between(low: number, high: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: 9973 }).map((step) => low + ((high - low) * step) / 9973);
}

export const some = <Value>(value: fc.Arbitrary<Value>): fc.Arbitrary<Value | undefined> =>
  fc.option(value, { nil: undefined });

export function twelve(value: fc.Arbitrary<number>): fc.Arbitrary<number[]> {
  return fc.array(value, { minLength: 12, maxLength: 12 });
}

/** A day of the season, or up to so many days before and after it. */
export function dayAround({ firstDay, weeks }: SeasonSpan, margin: number): fc.Arbitrary<number> {
  return fc.integer({ min: firstDay - margin, max: firstDay + 7 * weeks - 1 + margin });
}
