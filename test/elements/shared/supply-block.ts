import { type SeasonTotals, SUPPLY_FIELD_COUNT, SUPPLY_FIELDS } from '../../../src/engine/season/season.ts';
import { emptyWeeks } from '../../../src/engine/season/week-figures.ts';

/** A season's block of weekly litres, from the fields that a test is about; the others are 0. */
export function supplyBlock(
  weekly: Readonly<Partial<Record<keyof typeof SUPPLY_FIELDS, readonly number[]>>>,
): SeasonTotals {
  const weeks = Math.max(...Object.values(weekly).map((litres) => litres.length));
  const figures = emptyWeeks(weeks, SUPPLY_FIELD_COUNT);
  for (const [name, litres] of Object.entries(weekly)) {
    const field = SUPPLY_FIELDS[name as keyof typeof SUPPLY_FIELDS];
    figures.rows.forEach((row, week) => {
      row[field] = litres[week] ?? 0;
    });
  }
  return { weeks, figures };
}
