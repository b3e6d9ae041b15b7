/** The share of a month's normal rain that counts for a planting. */
import type { RainMethod } from '../../../engine/rain/effective-rain.ts';
import { countDays } from '../../../engine/season/days-mask.ts';
import { type KeptRain, keptRain, type RainKeeper } from '../../../engine/season/kept-rain.ts';
import type { PlantingDemand } from '../../../engine/season/planting-demand.ts';
import { rainMonth, yearsOfRain } from '../../../engine/season/planting-rain.ts';
import type { Season } from '../../../engine/season/season.ts';
import { monthMasks, wettedShareByMonth } from '../../../engine/season/week-masks.ts';
import type { Weather } from '../../../engine/weather.ts';
import { daysIn, sumOver } from '../day-span.ts';
import type { TraceSource, TraceStep, TraceValue } from '../trace-step.ts';
import { count, days, depth, factor, input, share } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';

/** A month of the season of which normal rain falls on the planting. */
export interface NormalMonth {
  /** Index in the season's months. */
  readonly index: number;
  /** Of the calendar, 0 is January. */
  readonly month: number;
  readonly rainMm: number;
}

export const METHOD_SOURCES: Readonly<Record<RainMethod, readonly TraceSource[]>> = {
  tr21: ['USDA SCS TR-21 (1967, rev. 1970)', { id: 'not-checked', cite: 'NEH Part 623 ch. 2, eq. 2-84, 2-85' }],
  fao: [{ id: 'not-checked', cite: 'Brouwer and Heibloem (1986), FAO Training Manual 3, Table 6' }],
  'scs-simplified': [{ id: 'scs-simplified', cite: 'USDA SCS' }],
  fraction: [{ id: 'common-practice' }, { id: 'rain-fraction', cite: 'California Title 23 s. 492 ff.' }],
  balance: ['FAO-56 eq. 85–88, p. 170'],
};

/** Of the days given by their indexes. */
export function normalMonths({ season }: PlantingCell, indexes: readonly number[]): readonly NormalMonth[] {
  const { months, rain } = season.weather;
  const isIn = (day: number, index: number) =>
    day >= (months.starts[index] as number) && day < (months.starts[index + 1] as number);
  return months.calendarMonth
    .map((month, index) => ({
      index,
      month,
      rainMm: sumOver(
        rain.expectedMm,
        indexes.filter((day) => isIn(day, index)),
      ),
    }))
    .filter(({ rainMm }) => rainMm > 0);
}

export function shareSteps(cell: PlantingCell, months: readonly NormalMonth[]): readonly TraceStep[] {
  const { season } = cell;
  const { site } = season.garden;
  if (site.rain.method !== 'balance') return months.map((month) => shareStep(cell, month, undefined));
  const kept = (index: number) => keptOnce(season, keeperOf(cell, index), cell.keeper.demand)[index];
  return months.map((month) => shareStep(cell, month, kept(month.index)));
}

/** Many years of days take long: each planting's are run once for all its cells. */
function keptOnce(
  { weather, garden: { site } }: Season,
  keeper: RainKeeper,
  demand: PlantingDemand,
): readonly KeptRain[] {
  const ofWeather = known.get(weather) ?? new WeakMap<PlantingDemand, Map<string, readonly KeptRain[]>>();
  known.set(weather, ofWeather);
  const ofDemand = ofWeather.get(demand) ?? new Map<string, readonly KeptRain[]>();
  ofWeather.set(demand, ofDemand);
  const way = `${keeper.isRefill} ${keeper.wateringDays} ${keeper.demand.share}`;
  const kept = ofDemand.get(way) ?? keptRain(keeper, yearsOfRain(site, weather));
  ofDemand.set(way, kept);
  return kept;
}

const known = new WeakMap<Weather, WeakMap<PlantingDemand, Map<string, readonly KeptRain[]>>>();

export function shareOf({ own }: PlantingCell, monthIndex: number): number {
  return own.rainShares[monthIndex] as number;
}

function shareStep(cell: PlantingCell, { index, month }: NormalMonth, kept: KeptRain | undefined): TraceStep {
  const { method } = cell.season.garden.site.rain;
  return {
    id: 'rain-share',
    month,
    variant: method,
    source: kept === undefined ? METHOD_SOURCES[method] : [...METHOD_SOURCES[method], yearsSource(cell)],
    inputs: kept === undefined ? shareInputs(cell, index, method) : keptInputs(cell, kept),
    result: factor(shareOf(cell, index)),
  };
}

function yearsSource({ season }: PlantingCell): TraceSource {
  return season.weather.years().basis === 'record'
    ? { id: 'years-recorded', text: season.garden.site.years?.source ?? '' }
    : { id: 'years-made', cite: 'Geng, Penning de Vries and Supit (1986)' };
}

function keptInputs({ season }: PlantingCell, { keptMm, rainMm }: KeptRain): readonly TraceValue[] {
  const { years } = season.weather.years();
  return [
    input('years', count(years)),
    input('years-rain', depth(rainMm / years)),
    input('years-kept', depth(keptMm / years)),
  ];
}

function shareInputs(cell: PlantingCell, monthIndex: number, method: RainMethod): readonly TraceValue[] {
  const given = monthOf(cell, monthIndex);
  if (given === undefined) return [];
  const rain = input('month-rain', depth(given.rainMm));
  if (method === 'fraction') return [rain, input('counted-share', share(given.fraction))];
  if (method !== 'tr21') return [rain];
  return [rain, input('month-demand', depth(given.etcMm)), ...storageInputs(cell, monthIndex, given.etcMm)];
}

/** What TR-21's D is: of a refill the mean readily available water, else at most the depth drawn between waterings. */
function storageInputs(cell: PlantingCell, monthIndex: number, etcMm: number) {
  const { season, own, keeper } = cell;
  const { starts, lengthDays } = season.weather.months;
  const { expectedRawMm, first, end } = own.demand;
  const ofMonth = { first: starts[monthIndex] as number, end: starts[monthIndex + 1] as number };
  const inGround = daysIn(ofMonth, (day) => day >= first && day < end);
  const raw = input('mean-readily-available', depth(sumOver(expectedRawMm, inGround) / inGround.length));
  if (keeper.isRefill) return [raw];
  return [
    raw,
    input('mean-demand', depth(etcMm / (lengthDays[monthIndex] as number))),
    input('week-watering-days', days(countDays(keeperOf(cell, monthIndex).wateringDays))),
  ];
}

const monthOf = (cell: PlantingCell, monthIndex: number) =>
  rainMonth(keeperOf(cell, monthIndex), cell.season.garden.site, cell.season.weather, monthIndex);

/** By the watering days and the wetted share of the month. */
function keeperOf({ keeper, planting, zone, season: { weather } }: PlantingCell, monthIndex: number): RainKeeper {
  const share = wettedShareByMonth(planting, weather)?.[monthIndex];
  const wateringDays = monthMasks(zone, weather)[monthIndex] ?? zone.wateringDays;
  const { demand } = keeper;
  return { ...keeper, wateringDays, demand: share === undefined ? demand : { ...demand, share } };
}
