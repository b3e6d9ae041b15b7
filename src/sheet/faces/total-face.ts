/** The whole garden's week: gallons and minutes of all zones together. */
import type { Season } from '../../engine/season/season.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';
import { saidOf, sentence, TOTAL_NAME } from '../words.ts';
import { type FigureFace, figureClass } from './cell-face.ts';
import type { Reading } from './reading.ts';

export interface GardenTotal {
  readonly litres: number;
  /** Minutes of all zones, one after the other. */
  readonly minutes: number;
  /** Gross irrigation that credited rain stood in for, litres. */
  readonly savedLitres: number;
}

/** Made once for the same season. */
const made = new WeakMap<Season, GardenTotal[]>();

export function weekTotal(season: Season, week: number): GardenTotal {
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

export function seasonTotal(season: Season): GardenTotal {
  const total = { litres: 0, minutes: 0, savedLitres: 0 };
  for (let week = 0; week < season.totals.weeks; week++) {
    const { litres, minutes, savedLitres } = weekTotal(season, week);
    total.litres += litres;
    total.minutes += minutes;
    total.savedLitres += savedLitres;
  }
  return total;
}

/** `when` is a week in words, or the whole season. */
export function totalFace(total: GardenTotal, when: string, { measure, format }: Reading): FigureFace {
  const one = {
    volume: format.volume(total.litres),
    minutes: format.minutes(total.minutes),
    rain: format.volume(total.savedLitres),
  };
  return {
    kind: 'figure',
    main: measure === 'all' ? one.volume : one[measure],
    lines: measure === 'all' ? [`${one.minutes} min`] : [],
    className: figureClass(measure, 'total'),
    label: saidOf(
      `${TOTAL_NAME}, ${when}`,
      sentence(
        format.volumeWords(total.litres),
        `${format.minutesWords(total.minutes)} of run time, zone after zone`,
        `rain stood in for ${format.volumeWords(total.savedLitres)}`,
      ),
    ),
  };
}
