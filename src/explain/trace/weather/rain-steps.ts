/** Rain of a week's days, from whatever told it. */
import { RAIN_ORIGINS } from '../../../engine/rain/daily-rain.ts';
import type { Season } from '../../../engine/season/season.ts';
import { type DaySpan, placesIn, sumAt } from '../day-span.ts';
import type { TraceStep } from '../trace-step.ts';
import { depth } from '../trace-value.ts';
import { normalsStep } from './normals-step.ts';
import { weekTotalStep } from './week-total-step.ts';

type Origin = (typeof RAIN_ORIGINS)[number];

const FROM: Readonly<Record<Origin, string>> = {
  normals: 'from the normals',
  'observed-day': 'as observed',
  'observed-week': 'from the observed total of the week',
};

/** `span` lies within one week and has at least one day. */
export function rainSteps(season: Season, span: DaySpan): readonly TraceStep[] {
  const { rain } = season.weather;
  const parts = RAIN_ORIGINS.map((origin, index) => ({
    origin,
    places: placesIn(span, (place) => rain.origin[place] === index),
  })).filter(({ places }) => places.length > 0);
  const { source } = season.garden.site.climate;
  return [
    ...parts.flatMap(({ origin, places }) => detailOf(season, origin, places)),
    {
      id: 'rain',
      title: 'Rain',
      says: 'All rain of these days, before asking how much of it the plants can use.',
      formula: 'rain = sum over the days',
      source: parts
        .map(({ origin }) => (origin === 'normals' ? `Monthly normals: ${source}` : 'Observed, from the log'))
        .filter((words, place, all) => all.indexOf(words) === place)
        .join('; '),
      inputs: parts.map(({ origin, places }) =>
        depth(`${places.length === 1 ? '1 day' : `${places.length} days`} ${FROM[origin]}`, sumAt(rain.mm, places)),
      ),
      result: depth('Rain', sumAt(rain.mm, placesIn(span))),
    },
  ];
}

function detailOf(season: Season, origin: Origin, places: readonly number[]): readonly TraceStep[] {
  const { rain } = season.weather;
  const daily = rain.mm;
  switch (origin) {
    case 'observed-day':
      return [];
    case 'normals':
      return [
        normalsStep(season, {
          id: 'rain-normals',
          of: 'rain',
          totals: season.garden.site.climate.rainMm,
          daily,
          places,
        }),
      ];
    case 'observed-week':
      return [
        weekTotalStep(season, {
          id: 'rain-week-total',
          of: 'rain',
          totalOf: ({ rainMm }) => rainMm,
          daily,
          isShared: (place) => rain.origin[place] === RAIN_ORIGINS.indexOf('observed-week'),
          places,
        }),
      ];
  }
}
