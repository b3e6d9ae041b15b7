/** Where the rain and the reference ET of a week come from, day by day, in a few words. */
import { ETO_METHODS } from '../../engine/climate/daily-eto.ts';
import { RAIN_ORIGINS } from '../../engine/rain/daily-rain.ts';
import type { Season } from '../../engine/season/season.ts';
import { type Csv, csvWords } from '../../language/en/csv.ts';
import type { Format } from '../../language/format/format.ts';

export type ReadingKind = 'rain' | 'eto';

type Origin = keyof Csv['origins'];

/** In the order in which they are named. */
const ORDER = [
  'typed',
  'observed-week',
  'file',
  'service',
  'estimate',
  'temperatures',
  'forecast',
  'normals',
] as const satisfies readonly Origin[];

/** Of each origin how many days, as `typed: 2 days, weather service: 5 days`. `week`: of the season, from 0. */
export function originsOf(season: Season, kind: ReadingKind, week: number, format: Format): string {
  const { origins, originDays } = csvWords(format.reader.language);
  const days = Array.from({ length: 7 }, (_, day) => originOf(season, kind, 7 * week + day));
  const parts = ORDER.flatMap((origin) => {
    const count = days.filter((each) => each === origin).length;
    return count === 0 ? [] : [originDays(format, origins[origin], count)];
  });
  return parts.join(', ');
}

/** `at`: day of the season, from 0. */
function originOf({ weather, garden }: Season, kind: ReadingKind, at: number): Origin {
  const observed = garden.observed.days.get(weather.firstDay + at);
  const found =
    kind === 'rain' ? RAIN_ORIGINS[weather.rain.origin[at] as number] : ETO_METHODS[weather.eto.method[at] as number];
  switch (found) {
    case 'observed-day':
      return observed?.rainFrom ?? 'typed';
    case 'observed':
      return observed?.etoFrom ?? 'typed';
    case 'penman-monteith':
    case 'hargreaves-samani':
      return 'temperatures';
    default:
      return found ?? 'normals';
  }
}
