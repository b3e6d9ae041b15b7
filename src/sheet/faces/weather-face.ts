/** A week of rain or reference ET, with a bar behind its figure. */
import type { SeasonWeather, WeatherKind } from '../week-weather.ts';
import { BAR_STEPS, classNames, type FigureFace } from './cell-face.ts';
import type { Reading } from './reading.ts';

export function weatherFace(kind: WeatherKind, weather: SeasonWeather, week: number, { format }: Reading): FigureFace {
  const here = weather.weeks[week];
  if (here === undefined) throw new RangeError(`week ${week} is outside the season`);
  return {
    kind: 'figure',
    main: format.depth(here.mm),
    lines: [],
    className: classNames(
      'cell',
      'weather',
      kind,
      barOf(here.mm, weather.greatestMm),
      here.observedDays > 0 && 'by-hand',
    ),
  };
}

export function weatherSeasonFace(kind: WeatherKind, weather: SeasonWeather, { format }: Reading): FigureFace {
  return {
    kind: 'figure',
    main: format.depth(weather.totalMm),
    lines: [],
    className: classNames('cell', 'weather', kind, 'season'),
  };
}

/** As high as the week's share of the season's greatest; what fell shows, however little. */
function barOf(mm: number, greatestMm: number): string {
  const steps = greatestMm > 0 ? (mm / greatestMm) * BAR_STEPS : 0;
  return `bar-${steps > 0 && steps < 1 ? 1 : Math.round(steps)}`;
}
