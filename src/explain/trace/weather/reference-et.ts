/** Reference ET of a week's days, from whatever told it. */
import { ETO_METHODS, monthlyEtoMm } from '../../../engine/climate/daily-eto.ts';
import type { Season } from '../../../engine/season/season.ts';
import { type DaySpan, daysIn, sumOver } from '../day-span.ts';
import type { TraceSource, TraceStep } from '../trace-step.ts';
import { depth, input } from '../trace-value.ts';
import { dayEtoStep, monthEtoSteps, type Weather } from './eto-from-weather.ts';
import { byReadingOrigin } from './reading-origins.ts';
import { departureSteps, monthsOf, normalsStep, weekTotalStep } from './totals-to-days.ts';

type Method = (typeof ETO_METHODS)[number];

/** `span` lies within one week and has at least one day. */
export function referenceEtSteps(season: Season, span: DaySpan): readonly TraceStep[] {
  const { eto } = season.weather;
  const parts = ETO_METHODS.flatMap((method, code) => {
    const indexes = daysIn(span, (index) => eto.method[index] === code);
    return byReadingOrigin(season, 'etoFrom', indexes).map((part) => ({ method, ...part }));
  });
  return [
    ...parts.flatMap(({ method, indexes }) => detailOf(season, method, indexes)),
    {
      id: 'reference-et',
      source: parts.flatMap(({ method, from }) => (from === undefined ? [sourceOf(method, season)] : [])),
      inputs: parts.map(({ method, from, indexes }) =>
        input({ id: 'eto-days', days: indexes.length, method, ...(from && { from }) }, depth(sumOver(eto.mm, indexes))),
      ),
      result: depth(sumOver(eto.mm, daysIn(span))),
    },
  ];
}

function sourceOf(method: Method, { garden }: Season): TraceSource {
  switch (method) {
    case 'normals':
      return { id: 'normals', text: garden.site.climate.source };
    case 'observed':
      return { id: 'observed' };
    case 'penman-monteith':
      return 'FAO-56 eq. 6';
    case 'hargreaves-samani':
      return 'FAO-56 eq. 52';
    case 'observed-week':
      return { id: 'observed-week' };
    case 'forecast':
      return { id: 'forecast-day' };
  }
}

function detailOf(season: Season, method: Method, indexes: readonly number[]): readonly TraceStep[] {
  const { eto } = season.weather;
  switch (method) {
    case 'observed':
    case 'forecast':
      return [];
    case 'normals':
      return fromNormals(season, indexes);
    case 'observed-week':
      return [
        weekTotalStep(season, {
          id: 'eto-week-total',
          totalOf: ({ etoMm }) => etoMm,
          daily: eto.mm,
          isShared: (index) => eto.method[index] === ETO_METHODS.indexOf('observed-week'),
          indexes,
        }),
      ];
    default:
      return indexes.map((index) => {
        const day = season.garden.span.firstDay + index;
        const weather = season.garden.observed.days.get(day) as Weather;
        return dayEtoStep(day, method, { weather, site: season.garden.site, etoMm: eto.mm[index] as number });
      });
  }
}

function fromNormals(season: Season, indexes: readonly number[]): readonly TraceStep[] {
  const { site, span } = season.garden;
  const daily = season.weather.eto.normalMm;
  return [
    ...monthEtoSteps(site, monthsOf(span.firstDay, indexes)),
    normalsStep(season, { id: 'eto-normals', totals: monthlyEtoMm(site), daily, indexes }),
    ...departureSteps(season, 'eto', indexes),
  ];
}
