import { type SeasonTotals, SUPPLY_FIELD_COUNT, SUPPLY_FIELDS } from '../../../src/engine/season/season.ts';

/** A season's block of weekly litres, from the fields that a test is about; the others are 0. */
export function supplyBlock(
  weekly: Readonly<Partial<Record<keyof typeof SUPPLY_FIELDS, readonly number[]>>>,
): SeasonTotals {
  const weeks = Math.max(...Object.values(weekly).map((litres) => litres.length));
  const figures = new Float64Array(SUPPLY_FIELD_COUNT * weeks);
  for (const [field, litres] of Object.entries(weekly)) {
    figures.set(litres, SUPPLY_FIELDS[field as keyof typeof SUPPLY_FIELDS] * weeks);
  }
  return { weeks, figures };
}
