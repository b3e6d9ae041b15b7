/** The whole garden's weeks: those of its zones added up. */
import { type Season, type SeasonTotals, SUPPLY_FIELD_COUNT, type ZoneSeason } from './season.ts';
import { WeekFigures } from './week-figures.ts';

/** Weeks in which no zone is another than before are taken over. */
export function seasonTotals(zones: readonly ZoneSeason[], weeks: number, previous?: Season): SeasonTotals {
  const figures = new WeekFigures(weeks, SUPPLY_FIELD_COUNT);
  const before = zones[0] && previous?.zones.length === zones.length ? previous : undefined;
  const isMoved: boolean[] = [];
  zones.forEach(({ figures: own }, at) => {
    const known = before?.zones[at]?.figures;
    if (own === known) return;
    for (let week = 0; week < weeks; week++) isMoved[week] ||= !known || own.arrayOf(week) !== known.arrayOf(week);
  });
  // Zone by zone: the figures of one lie together.
  for (const { figures: own } of zones) {
    for (let week = 0; week < weeks; week++) if (!before || isMoved[week]) figures.add(own, week);
  }
  for (let week = 0; week < weeks; week++) if (before && !isMoved[week]) figures.add(before.totals.figures, week);
  return { weeks, figures };
}
