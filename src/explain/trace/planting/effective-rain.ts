/** How much of the rain enters a planting's root zone. */
import { RAIN_ORIGINS } from '../../../engine/rain/daily-rain.ts';
import type { RainMethod } from '../../../engine/rain/effective-rain.ts';
import { rainMonth } from '../../../engine/season/planting-rain.ts';
import { daysIn, sumOver } from '../day-span.ts';
import type { TraceSource, TraceStep, TraceValue } from '../trace-step.ts';
import { depth, factor, input, share } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';

/** A month of the season of which normal rain falls on the planting in this week. */
interface NormalMonth {
  /** Index in the season's months. */
  readonly index: number;
  /** Of the calendar, 0 is January. */
  readonly month: number;
  readonly rainMm: number;
}

const METHODS: Readonly<Record<RainMethod, { readonly source: readonly TraceSource[] }>> = {
  tr21: {
    source: ['USDA SCS TR-21 (1967, rev. 1970)', { id: 'not-checked', cite: 'NEH Part 623 ch. 2, eq. 2-84, 2-85' }],
  },
  fao: { source: [{ id: 'not-checked', cite: 'Brouwer and Heibloem (1986), FAO Training Manual 3, Table 6' }] },
  'scs-simplified': { source: [{ id: 'scs-simplified', cite: 'USDA SCS' }] },
  fraction: { source: [{ id: 'common-practice' }, { id: 'rain-fraction', cite: 'California Title 23 s. 492 ff.' }] },
  balance: { source: ['FAO-56 eq. 85–88'] },
};

export function effectiveRainSteps(cell: PlantingCell): readonly TraceStep[] {
  const months = normalMonths(cell);
  return [...months.map((month) => shareStep(cell, month)), effectiveRainStep(cell, months)];
}

function normalMonths({ season, ground }: PlantingCell): readonly NormalMonth[] {
  const { months, rain } = season.weather;
  const isIn = (day: number, index: number) =>
    day >= (months.starts[index] as number) && day < (months.starts[index + 1] as number);
  return months.calendarMonth
    .map((month, index) => ({
      index,
      month,
      rainMm: sumOver(
        rain.expectedMm,
        daysIn(ground, (day) => isIn(day, index)),
      ),
    }))
    .filter(({ rainMm }) => rainMm > 0);
}

function shareStep(cell: PlantingCell, { index, month }: NormalMonth): TraceStep {
  const { method } = cell.season.garden.site.rain;
  return {
    id: 'rain-share',
    month,
    variant: method,
    source: METHODS[method].source,
    inputs: shareInputs(cell, index, method),
    result: factor(shareOf(cell, index)),
  };
}

function shareOf({ own }: PlantingCell, monthIndex: number): number {
  return own.rainShares[monthIndex] as number;
}

function shareInputs(cell: PlantingCell, monthIndex: number, method: RainMethod): readonly TraceValue[] {
  const { season, own, zone } = cell;
  const keeper = { demand: own.demand, isRefill: own.planting.watering === 'refill', wateringDays: zone.wateringDays };
  const given = rainMonth(keeper, season.garden.site, season.weather, monthIndex);
  if (given === undefined) return [];
  const rain = input('month-rain', depth(given.rainMm));
  if (method === 'fraction') return [rain, input('counted-share', share(given.fraction))];
  if (method !== 'tr21') return [rain];
  return [rain, input('month-demand', depth(given.etcMm)), input('usable-storage', depth(given.usableStorageMm))];
}

function effectiveRainStep(cell: PlantingCell, months: readonly NormalMonth[]): TraceStep {
  const { site } = cell.season.garden;
  const measured = measuredInputs(cell);
  return {
    id: 'effective-rain',
    source: [...METHODS[site.rain.method].source, { id: 'measured-days', cite: 'FAO-56 p. 170' }],
    inputs: [
      ...months.flatMap(({ index, month, rainMm }) => [
        input({ id: 'normal-rain', month }, depth(rainMm)),
        input({ id: 'rain-share', month }, factor(shareOf(cell, index))),
      ]),
      ...measured,
      ...(measured.length > 0 ? [input('runoff', share(site.rain.runoffFraction))] : []),
    ],
    result: depth(cell.at('rainSoakedMm')),
  };
}

function measuredInputs({ season, ground, dayOf }: PlantingCell): readonly TraceValue[] {
  const { rain, eto } = season.weather;
  const from = (origin: (typeof RAIN_ORIGINS)[number]) =>
    daysIn(ground, (index) => rain.origin[index] === RAIN_ORIGINS.indexOf(origin) && (rain.mm[index] as number) > 0);
  const ofWeek = from('observed-week');
  return [
    ...from('observed-day').flatMap((index) => [
      input({ id: 'day-rain', day: dayOf(index) }, depth(rain.mm[index] as number)),
      input({ id: 'day-eto', day: dayOf(index) }, depth(eto.mm[index] as number)),
    ]),
    ...(ofWeek.length > 0 ? [input('week-rain', depth(sumOver(rain.mm, ofWeek)))] : []),
  ];
}
