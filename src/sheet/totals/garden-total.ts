/** The whole garden's week and season: water and minutes of all zones together. */
import type { Season } from '../../engine/season/season.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';

export interface GardenTotal {
  readonly litres: number;
  /** Minutes of all zones, one after the other. */
  readonly minutes: number;
  /** Gross irrigation that credited rain stood in for, litres. */
  readonly savedLitres: number;
}

/** Made once for the same season. */
const made = new WeakMap<Season, GardenTotal[]>();

export function gardenWeek(season: Season, week: number): GardenTotal {
  const known = made.get(season) ?? [];
  made.set(season, known);
  known[week] ??= sumOfZones(season, week);
  return known[week];
}

function sumOfZones(season: Season, week: number): GardenTotal {
  const total = { litres: 0, minutes: 0, savedLitres: 0 };
  for (const zone of season.zones) {
    total.litres += zoneFigure(zone, 'litres', week);
    total.minutes += zoneFigure(zone, 'minutes', week);
    total.savedLitres += zoneFigure(zone, 'rainCreditLitres', week);
  }
  return total;
}

export function gardenSeason(season: Season): GardenTotal {
  const total = { litres: 0, minutes: 0, savedLitres: 0 };
  for (let week = 0; week < season.totals.weeks; week++) {
    const { litres, minutes, savedLitres } = gardenWeek(season, week);
    total.litres += litres;
    total.minutes += minutes;
    total.savedLitres += savedLitres;
  }
  return total;
}
