/** What random gardens reach of the season's rules: how many gardens or weeks hold each of them. */
import type { Garden, GardenPlanting, WeekChoice } from '../../src/engine/garden.ts';
import { daysIn, yearMonthOf } from './calendar.ts';
import type { Comparison } from './compare.ts';
import type { PlantingFigures } from './week.ts';
import type { ZoneFigures } from './zone-week.ts';

export function reachedBy(gardens: readonly Garden[], comparisons: readonly Comparison[]): ReadonlyMap<string, number> {
  const oracle = comparisons.flatMap((comparison) => comparison.oracle);
  const zones = oracle.flatMap(({ weeks }) => weeks);
  const plantings = gardens.flatMap((garden, place) =>
    garden.zones.flatMap((zone, z) =>
      zone.plantings.flatMap((planting, p) =>
        (comparisons[place]?.oracle[z]?.plantings[p]?.weeks ?? []).map((week) => ({ planting, week })),
      ),
    ),
  );
  const choices = gardens.flatMap((garden) => garden.zones.flatMap((zone) => [...zone.choices.values()]));
  const count = <Each>(all: readonly Each[], holds: Readonly<Record<string, (each: Each) => boolean>>) =>
    Object.entries(holds).map(([what, is]) => [what, all.filter(is).length] as const);
  return new Map([
    ...count(gardens, OF_GARDENS),
    ...count(zones, OF_ZONE_WEEKS),
    ...count(plantings, OF_PLANTING_WEEKS),
    ...count(choices, OF_CHOICES),
  ]);
}

const isBalance = ({ site }: Garden) => site.rain.method === 'balance';

const OF_GARDENS: Readonly<Record<string, (garden: Garden) => boolean>> = {
  'rain days known': ({ site }) => site.climate.rainDays !== undefined,
  'rain days assumed': ({ site }) => site.climate.rainDays === undefined,
  'rain kept over recorded years': (garden) => isBalance(garden) && garden.site.years !== undefined,
  'rain kept over made years': (garden) => isBalance(garden) && garden.site.years === undefined,
  'a total read through a day before the week’s last': ({ observed, span }) =>
    [...observed.weeks.values()].some(({ rainMm, rainThrough }) => {
      return rainMm !== undefined && rainThrough !== undefined && (rainThrough - span.firstDay + 7) % 7 < 6;
    }),
  'days read': ({ observed }) => observed.days.size > 0,
  forecasts: ({ observed }) => (observed.forecasts ?? []).some(({ days }) => days.size > 0),
  'a leap February': ({ span }) => daysOf(span).some((day) => isLeapFebruary(day)),
};

const isComputed = ({ origin }: ZoneFigures) => origin === 'computed';

const OF_ZONE_WEEKS: Readonly<Record<string, (week: ZoneFigures) => boolean>> = {
  'decided on one morning alone': (week) => isComputed(week) && bits(week.decidedMask) === 1 && week.minutes > 0,
  'decided anew on later mornings': (week) => isComputed(week) && bits(week.decidedMask) > 1,
  'other minutes on other days': (week) => isComputed(week) && new Set(runs(week)).size > 1,
  'some mornings skipped': ({ skippedMask, minutes }) => skippedMask > 0 && minutes > 0,
  'all mornings skipped': ({ skippedMask, minutes }) => skippedMask > 0 && minutes === 0,
  'several cycles': ({ cycles }) => cycles > 1,
};

interface PlantingWeek {
  readonly planting: GardenPlanting;
  readonly week: PlantingFigures;
}

const isRefill = ({ planting }: PlantingWeek) => planting.watering === 'refill';

const OF_PLANTING_WEEKS: Readonly<Record<string, (of: PlantingWeek) => boolean>> = {
  'a refill due and filled': (of) => isRefill(of) && of.week.dueMask > 0 && of.week.fillingMm === 0,
  'a refill left partly filled': (of) => isRefill(of) && of.week.fillingMm > 0 && of.week.irrigationNetMm > 0,
  'a refill behind a shut-off that is due': (of) => isRefill(of) && of.planting.hasShutOff && of.week.dueMask > 0,
  'a refill without a shut-off that is due': (of) => isRefill(of) && !of.planting.hasShutOff && of.week.dueMask > 0,
  'a shut-off open on some days': ({ planting, week }) => planting.hasShutOff && week.openMask > 0,
  establishing: ({ planting, week }) => planting.establishing !== undefined && week.groundDays > 0,
  'irrigation that drains with rain': ({ week }) => week.rainDrainedMm > 0 && week.irrigationDrainedMm > 0,
  'a goal that was missed': ({ week }) => week.missedMm > 0 && week.irrigationNetMm > 0,
};

const OF_CHOICES: Readonly<Record<string, (choice: WeekChoice) => boolean>> = {
  'runs by day with the shut-offs that were open': ({ runs }) => hasOne(runs, ({ open }) => open !== undefined),
  'runs by day without them': ({ runs }) => hasOne(runs, ({ open }) => open === undefined),
  'a closed week': ({ closed, minutesRun, runs }) => closed === true && minutesRun === undefined && runs === undefined,
};

function hasOne<Value>(all: ReadonlyMap<number, Value> | undefined, holds: (value: Value) => boolean): boolean {
  return [...(all ?? new Map<number, Value>()).values()].some(holds);
}

function runs(week: ZoneFigures): readonly number[] {
  const { minutesDay0, minutesDay1, minutesDay2, minutesDay3, minutesDay4, minutesDay5, minutesDay6 } = week;
  const all = [minutesDay0, minutesDay1, minutesDay2, minutesDay3, minutesDay4, minutesDay5, minutesDay6];
  return all.filter((minutes) => minutes > 0);
}

function bits(mask: number): number {
  return [0, 1, 2, 3, 4, 5, 6].filter((bit) => (mask & (1 << bit)) !== 0).length;
}

function daysOf({ firstDay, weeks }: Garden['span']): readonly number[] {
  return Array.from({ length: 7 * weeks }, (_, day) => firstDay + day);
}

function isLeapFebruary(day: number): boolean {
  const month = yearMonthOf(day);
  return month.month === 1 && daysIn(month) === 29;
}
