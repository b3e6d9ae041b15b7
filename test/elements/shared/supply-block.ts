import { type SeasonTotals, SUPPLY_FIELD_COUNT, SUPPLY_FIELDS } from '../../../src/engine/season/season.ts';
import { WeekFigures } from '../../../src/engine/season/week-figures.ts';

/** A season's block of weekly litres, from the fields that a test is about; the others are 0. */
export function supplyBlock(
  weekly: Readonly<Partial<Record<keyof typeof SUPPLY_FIELDS, readonly number[]>>>,
): SeasonTotals {
  const weeks = Math.max(...Object.values(weekly).map((litres) => litres.length));
  const figures = new WeekFigures(weeks, SUPPLY_FIELD_COUNT);
  for (const [name, litres] of Object.entries(weekly)) {
    const field = SUPPLY_FIELDS[name as keyof typeof SUPPLY_FIELDS];
    litres.forEach((each, week) => {
      figures.block[week * SUPPLY_FIELD_COUNT + field] = each;
    });
  }
  return { weeks, figures };
}
