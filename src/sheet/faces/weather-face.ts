/** A week of rain or reference ET, with a bar behind its figure. */
import type { SeasonWeather, WeekWeather } from '../week-weather.ts';
import { ETO_NAME, RAIN_NAME, saidOf, sentence } from '../words.ts';
import { BAR_STEPS, classNames, type FigureFace } from './cell-face.ts';
import type { Reading } from './reading.ts';

type WeatherKind = 'eto' | 'rain';

const NAMES: Readonly<Record<WeatherKind, string>> = { eto: ETO_NAME, rain: RAIN_NAME };

export function weatherFace(kind: WeatherKind, weather: SeasonWeather, week: number, reading: Reading): FigureFace {
  const { format, calendar } = reading;
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
    label: saidOf(`${NAMES[kind]}, ${calendar.words(week)}`, sentence(format.depthWords(here.mm), origin(here))),
  };
}

export function weatherSeasonFace(kind: WeatherKind, weather: SeasonWeather, { format }: Reading): FigureFace {
  return {
    kind: 'figure',
    main: format.depth(weather.totalMm),
    lines: [],
    className: classNames('cell', 'weather', kind, 'season'),
    label: saidOf(`${NAMES[kind]}, whole season`, `${format.depthWords(weather.totalMm)}.`),
  };
}

/** As high as the week's share of the season's greatest; what fell shows, however little. */
function barOf(mm: number, greatestMm: number): string {
  const steps = greatestMm > 0 ? (mm / greatestMm) * BAR_STEPS : 0;
  return `bar-${steps > 0 && steps < 1 ? 1 : Math.round(steps)}`;
}

function origin({ observedDays, hasWeekTotal }: WeekWeather): string {
  if (observedDays === 0) return 'from the normals';
  if (hasWeekTotal) return 'total of the week entered by hand';
  return observedDays === 7 ? 'entered by day' : `${observedDays} of 7 days entered, the rest from the normals`;
}
