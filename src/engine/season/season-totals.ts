/** The whole garden's weeks: those of its zones added up. */
import { type Season, type SeasonTotals, SUPPLY_FIELD_COUNT, type ZoneSeason } from './season.ts';
import { emptyWeeks } from './week-figures.ts';

/** Weeks in which no zone is another than before are taken over. */
export function seasonTotals(zones: readonly ZoneSeason[], weeks: number, previous?: Season): SeasonTotals {
  const figures = emptyWeeks(weeks, SUPPLY_FIELD_COUNT);
  const before = previous?.zones.length === zones.length ? previous : undefined;
  const { rows } = figures;
  const taken: (number[] | undefined)[] = before?.totals.figures.rows.slice() ?? [];
  // Zone by zone: the rows of one lie together.
  zones.forEach(({ figures: own }, at) => {
    const known = before?.zones[at]?.figures.rows;
    if (own.rows === known) return;
    for (let week = 0; week < weeks; week++) if (own.rows[week] !== known?.[week]) taken[week] = undefined;
  });
  for (let week = 0; week < weeks; week++) {
    const sums = rows[week] as number[];
    rows[week] = taken[week] ?? sums;
    if (rows[week] === sums) for (const { figures: own } of zones) addFields(sums, own.rows[week] as number[]);
  }
  return { weeks, figures };
}

function addFields(sums: number[], row: readonly number[]): void {
  for (let field = 0; field < SUPPLY_FIELD_COUNT; field++) {
    sums[field] = (sums[field] as number) + (row[field] as number);
  }
}
