/** A zone's week as it would be with another choice: its shut-offs as they would then stand. */
import type { WeekChoice } from '../garden.ts';
import type { Season, ZoneSeason } from './season.ts';
import { seasonBuffers, zoneSeasonAfter } from './zone-season.ts';
import { zoneFigure } from './zone-week.ts';

/** Litres of the week, gross, for one choice after another. The season stays as it is. */
export function litresByChoice(season: Season, zone: ZoneSeason, week: number): (choice: WeekChoice) => number {
  const { garden, weather } = season;
  const buffers = seasonBuffers();
  return (choice) => {
    const choices = new Map(zone.zone.choices).set(week, choice);
    const context = { zone: { ...zone.zone, choices }, site: garden.site, weather };
    return zoneFigure(zoneSeasonAfter(context, buffers, zone, { first: week, last: week }), 'litres', week);
  };
}
