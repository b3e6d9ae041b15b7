/** What the random parts of a plan share: the frame they stand in, and amounts as a person would type them. */
import fc from 'fast-check';
import { isoDate } from '../../src/engine/calendar.ts';
import { fromSi, type Quantity, type UnitSystem } from '../../src/engine/units.ts';
import { NAME_PATTERN } from '../../src/plan/schema/name-text.ts';

export interface Frame {
  readonly units: UnitSystem;
  readonly firstDay: number;
  readonly weeks: number;
}

/** A typed amount between two values in SI: three digits in the plan's own unit. */
export function amount(quantity: Quantity, { units }: Frame, lowSi: number, highSi: number): fc.Arbitrary<number> {
  const low = fromSi(lowSi, quantity, units);
  const high = fromSi(highSi, quantity, units);
  return fc.integer({ min: 0, max: 1000 }).map((step) => {
    const typed = Number((low + ((high - low) * step) / 1000).toPrecision(3));
    // Rounding must not leave the range, nor write -0.
    return typed < low || typed > high ? low + ((high - low) * step) / 1000 : typed + 0;
  });
}

/** By hundredths. */
export function hundredths(low: number, high: number): fc.Arbitrary<number> {
  return fc.integer({ min: low, max: high }).map((each) => each / 100);
}

/** 0 to 1. */
export const share: fc.Arbitrary<number> = hundredths(0, 100);

/** A name or note: words, other scripts, and what must never be read as markup or formula. */
export const wordy: fc.Arbitrary<string> = fc.oneof(
  fc.constantFrom('Raised beds', 'Shrubs by the wall', '花壇', '=1+1', '<b>bold</b>', 'O’Neill “north”', '__proto__'),
  fc.string({ unit: 'grapheme', minLength: 1, maxLength: 8 }).filter((text) => NAME_PATTERN.test(text)),
);

/** The value, or nothing. */
export const some = <Value>(value: fc.Arbitrary<Value>): fc.Arbitrary<Value | undefined> =>
  fc.option(value, { nil: undefined });

/** A day of the season, or up to so many days before and after it. */
export function dayNear({ firstDay, weeks }: Frame, before: number, after: number): fc.Arbitrary<string> {
  return fc.integer({ min: firstDay - before, max: firstDay + 7 * weeks - 1 + after }).map(isoDate);
}

/** Two ISO days, the earlier first; where only one is there, as they are. */
export function inOrder<Days extends { readonly from?: string | undefined; readonly to?: string | undefined }>({
  from,
  to,
}: Days): Pick<Days, 'from' | 'to'> {
  if (from === undefined || to === undefined || from <= to) return { from, to } as Pick<Days, 'from' | 'to'>;
  return { from: to, to: from } as Pick<Days, 'from' | 'to'>;
}
