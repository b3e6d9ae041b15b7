/** The whole garden's weeks: those of its zones added up. */
import { type Season, type SeasonTotals, SUPPLY_FIELD_COUNT, type ZoneSeason } from './season.ts';
import { emptyWeeks } from './week-figures.ts';

/** Weeks in which no zone is another than before are taken over. */
export function seasonTotals(zones: readonly ZoneSeason[], weeks: number, previous?: Season): SeasonTotals {
  const figures = emptyWeeks(weeks, SUPPLY_FIELD_COUNT);
  const before = previous?.zones.length === zones.length ? previous : undefined;
  figures.rows.forEach((sums, week) => {
    const isSame = ({ figures: { rows } }: ZoneSeason, at: number) =>
      rows[week] === before?.zones[at]?.figures.rows[week];
    const taken = zones.every(isSame) ? before?.totals.figures.rows[week] : undefined;
    if (taken !== undefined) figures.rows[week] = taken;
    else for (const { figures: own } of zones) addFields(sums, own.rows[week] as number[]);
  });
  return { weeks, figures };
}

function addFields(sums: number[], row: readonly number[]): void {
  for (let field = 0; field < SUPPLY_FIELD_COUNT; field++) {
    sums[field] = (sums[field] as number) + (row[field] as number);
  }
}
