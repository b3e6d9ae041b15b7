/** Rain of a week's days, from whatever told it. */
import { RAIN_ORIGINS } from '../../../engine/rain/daily-rain.ts';
import type { Season } from '../../../engine/season/season.ts';
import { type DaySpan, daysIn, sumOver } from '../day-span.ts';
import type { TraceSource, TraceStep } from '../trace-step.ts';
import { depth, input } from '../trace-value.ts';
import { rainTotalStep } from './rain-total.ts';
import { byReadingOrigin } from './reading-origins.ts';
import { departureSteps, normalsStep } from './totals-to-days.ts';

type Origin = (typeof RAIN_ORIGINS)[number];

/** `span` lies within one week and has at least one day. */
export function rainSteps(season: Season, span: DaySpan): readonly TraceStep[] {
  const { rain } = season.weather;
  const parts = RAIN_ORIGINS.flatMap((origin, code) => {
    const indexes = daysIn(span, (index) => rain.origin[index] === code);
    return byReadingOrigin(season, 'rainFrom', indexes).map((part) => ({ origin, ...part }));
  });
  // Others say in their labels where they come from.
  const isTyped = parts.some(({ origin, from }) => origin.startsWith('observed') && from === undefined);
  const normals: TraceSource = { id: 'normals', text: season.garden.site.climate.source };
  return [
    ...parts.flatMap(({ origin, indexes }) => detailOf(season, origin, indexes)),
    {
      id: 'rain',
      source: [
        ...(parts.some(({ origin }) => origin === 'normals') ? [normals] : []),
        ...(isTyped ? [{ id: 'observed' } as const] : []),
        ...(parts.some(({ origin }) => origin === 'forecast') ? [{ id: 'forecast-day' } as const] : []),
      ],
      inputs: parts.map(({ origin, from, indexes }) =>
        input(
          { id: 'rain-days', days: indexes.length, origin, ...(from && { from }) },
          depth(sumOver(rain.mm, indexes)),
        ),
      ),
      result: depth(sumOver(rain.mm, daysIn(span))),
    },
  ];
}

function detailOf(season: Season, origin: Origin, indexes: readonly number[]): readonly TraceStep[] {
  const daily = season.weather.rain.normalMm;
  switch (origin) {
    case 'observed-day':
    case 'forecast':
      return [];
    case 'normals':
      return [
        normalsStep(season, { id: 'rain-normals', totals: season.garden.site.climate.rainMm, daily, indexes }),
        ...departureSteps(season, 'rain', indexes),
      ];
    case 'observed-week':
      return [rainTotalStep(season, indexes)];
  }
}
