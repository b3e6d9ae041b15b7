/** The whole garden's weeks: those of its zones added up. */
import { type Season, type SeasonTotals, SUPPLY_FIELD_COUNT, type ZoneSeason } from './season.ts';
import { SPAN_WEEKS, WeekFigures } from './week-figures.ts';

/** Weeks in which no zone is another than before are taken over. */
export function seasonTotals(zones: readonly ZoneSeason[], weeks: number, previous?: Season): SeasonTotals {
  const figures = new WeekFigures(weeks, SUPPLY_FIELD_COUNT);
  const before = zones[0] && previous?.zones.length === zones.length ? previous : undefined;
  for (let week = 0; week < weeks; week += SPAN_WEEKS) {
    const isSame = zones.every(
      ({ figures: own }, at) => own.arrayOf(week) === before?.zones[at]?.figures.arrayOf(week),
    );
    for (const { figures: own } of before && isSame ? [before.totals] : zones) figures.addSpan(own, week);
  }
  return { weeks, figures };
}
