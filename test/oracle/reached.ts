/** What random gardens reach of the season's rules: how many gardens or weeks hold each of them. */
import type { Garden, GardenPlanting, GardenZone, RestSpan, WeekChoice } from '../../src/engine/garden.ts';
import { daysIn, yearMonthOf } from './calendar.ts';
import type { Comparison } from './compare.ts';
import { restOn, wettedShareIn } from './crop.ts';
import { allowedLitres } from './cuts.ts';
import { TOLERANCE } from './near-ties.ts';
import { flowsOn, type LineFlow } from './planting-flow.ts';
import { OF_DAYS, plantingDays } from './reached-days.ts';
import { allowedMask, daysFrom, isInMask } from './watering-days.ts';
import type { PlantingFigures } from './week.ts';
import type { ZoneFigures } from './zone-week.ts';

export function reachedBy(gardens: readonly Garden[], comparisons: readonly Comparison[]): Reached {
  const zones = comparisons.flatMap(({ oracle }) => oracle.flatMap(({ weeks }) => weeks));
  const plantings = plantingWeeks(gardens, comparisons);
  const choices = gardens.flatMap((garden) => garden.zones.flatMap((zone) => [...zone.choices.values()]));
  return new Map([
    ...count(gardens, OF_GARDENS),
    ...count(zones, OF_ZONE_WEEKS),
    ...count(plantings, OF_PLANTING_WEEKS),
    ...count(plantings, OF_ZONES_WITH_IT),
    ...count(choices, OF_CHOICES),
    ...count(plantingDays(gardens, comparisons), OF_DAYS),
    ...count(zoneWeeks(gardens, comparisons), OF_TIMED_WEEKS),
  ]);
}

/** What limits the water: restrictions and cuts, and lines at the pressure that is there. */
export function limitsReachedBy(gardens: readonly Garden[], comparisons: readonly Comparison[]): Reached {
  const weeks = zoneWeeks(gardens, comparisons);
  const laid = gardens.flatMap((garden) =>
    garden.zones.flatMap(({ plantings }) => plantings.flatMap((planting) => laidDays(garden, planting))),
  );
  const plantings = plantingWeeks(gardens, comparisons);
  return new Map([
    ...count(weeks, OF_LIMITED_WEEKS),
    ...count(laid, OF_LAID_DAYS),
    ...count(plantings, OF_CUT_PLANTINGS),
  ]);
}

function zoneWeeks(gardens: readonly Garden[], comparisons: readonly Comparison[]): readonly ZoneWeek[] {
  return gardens.flatMap((garden, at) =>
    garden.zones.flatMap((zone, z) => {
      const result = comparisons[at]?.oracle[z];
      return (result?.weeks ?? []).map((figures, week) => {
        return { garden, zone, week, figures, kept: result?.kept[week] ?? 1 };
      });
    }),
  );
}

function plantingWeeks(gardens: readonly Garden[], comparisons: readonly Comparison[]): readonly PlantingWeek[] {
  return gardens.flatMap((garden, at) =>
    garden.zones.flatMap((zone, z) => {
      const result = comparisons[at]?.oracle[z];
      return zone.plantings.flatMap((planting, p) =>
        (result?.plantings[p]?.weeks ?? []).map((week, index): PlantingWeek => {
          const ofZone = result?.weeks[index] as ZoneFigures;
          return { garden, zone, planting, week, index, ofZone, before: result?.plantings[p]?.weeks[index - 1] };
        }),
      );
    }),
  );
}

type Reached = ReadonlyMap<string, number>;

function count<Each>(all: readonly Each[], holds: Readonly<Record<string, (each: Each) => boolean>>) {
  return Object.entries(holds).map(([what, is]) => [what, all.filter(is).length] as const);
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
  'several runs a day for pots': ({ runsADay }) => runsADay > 1,
};

interface PlantingWeek {
  readonly garden: Garden;
  readonly zone: GardenZone;
  readonly planting: GardenPlanting;
  readonly week: PlantingFigures;
  /** Of the season. */
  readonly index: number;
  readonly ofZone: ZoneFigures;
  readonly before: PlantingFigures | undefined;
}

const isGrowing = ({ week }: PlantingWeek) => week.groundDays > 0;
const isInPots = ({ planting }: PlantingWeek) => planting.container !== undefined;
const shareIn = ({ planting }: PlantingWeek, index: number) => wettedShareIn(planting, index);
const isWettedInPart = (of: PlantingWeek) => shareIn(of, of.index) < 1;
/** By how much more of its ground is wetted than in the week before; 0 where it was not in the ground then. */
const newlyWetted = (of: PlantingWeek) => {
  const stays = (of.before?.groundDays ?? 0) > 0 && of.week.groundDays > 0;
  return stays ? shareIn(of, of.index) - shareIn(of, of.index - 1) : 0;
};
const restsInWeek = ({ garden, planting, zone, index }: PlantingWeek) => {
  const mask = allowedMask(zone, index);
  return daysFrom(7 * index, 7 * index + 6).some(
    (day) => isInMask(mask, day) && restOn(planting, garden.span.firstDay + day) !== undefined,
  );
};
const isResting = ({ planting: { rest = [] } }: PlantingWeek, kind: RestSpan['kind']) =>
  rest.some((span) => span.kind === kind);

const leachingFraction = ({ planting }: PlantingWeek) => planting.leachingFraction ?? 0;
const washes = (of: PlantingWeek) => leachingFraction(of) > 0;
/** Irrigation that drained beyond what is to wash salt away; 0 where rounding alone tells them apart. */
const drainedBeyondMm = (of: PlantingWeek) => {
  const mm = of.week.irrigationDrainedMm - leachingFraction(of) * of.week.irrigationNetMm;
  return mm > 0.001 ? mm : 0;
};

const isRefill = ({ planting }: PlantingWeek) => planting.watering === 'refill';

const OF_PLANTING_WEEKS: Readonly<Record<string, (of: PlantingWeek) => boolean>> = {
  'a refill due and filled': (of) => isRefill(of) && of.week.dueMask > 0 && of.week.fillingMm === 0,
  'a refill left partly filled': (of) => isRefill(of) && of.week.fillingMm > 0 && of.week.irrigationNetMm > 0,
  'a refill behind a shut-off that is due': (of) => isRefill(of) && of.planting.hasShutOff && of.week.dueMask > 0,
  'a refill without a shut-off that is due': (of) => isRefill(of) && !of.planting.hasShutOff && of.week.dueMask > 0,
  'a shut-off open on some days': ({ planting, week }) => planting.hasShutOff && week.openMask > 0,
  establishing: ({ planting, week }) => planting.establishing !== undefined && week.groundDays > 0,
  'irrigation that drains with rain': (of) => of.week.rainDrainedMm > 0 && drainedBeyondMm(of) > 0,
  'a goal that was missed': ({ week }) => week.missedMm > 0 && week.irrigationNetMm > 0,
  'a pot that is watered': (of) => isInPots(of) && of.week.irrigationNetMm > 0,
  'a pot that is short': (of) => isInPots(of) && of.week.shortDays > 0,
  'a pot that overflows': (of) => isInPots(of) && drainedBeyondMm(of) > 0,
  'water that washes salt away through a pot that does not overflow': (of) =>
    isInPots(of) && washes(of) && of.week.irrigationNetMm > 0 && drainedBeyondMm(of) === 0,
  'a pot that is filled deep and seldom': (of) => isInPots(of) && isRefill(of) && of.week.dueMask > 0,
  'a pot behind a shut-off': (of) => isInPots(of) && of.planting.hasShutOff && of.week.openMask > 0,
  'ground wetted in part, kept': (of) => isWettedInPart(of) && !isRefill(of) && of.week.irrigationNetMm > 0,
  'ground wetted in part, refilled': (of) => isWettedInPart(of) && isRefill(of) && of.week.irrigationNetMm > 0,
  'ground wetted in part behind a shut-off': (of) =>
    isWettedInPart(of) && of.planting.hasShutOff && of.week.irrigationNetMm > 0,
  'stores that part': (of) => isWettedInPart(of) && of.week.wettedEndMm + 1 < of.week.dryEndMm,
  'short in both stores': (of) => isWettedInPart(of) && of.week.shortDays > 0,
  'establishing in the wetted store': (of) =>
    isWettedInPart(of) && of.planting.establishing !== undefined && of.week.irrigationNetMm > 0,
  'roots that reach dry soil': ({ week }) => week.rootedMm > 0,
  'roots that grow in moist soil': (of) =>
    isGrowing(of) && of.planting.rootZone.initialDepthM !== undefined && of.planting.rootZone.startDepletion === 0,
  'water that is to wash salt away': (of) => washes(of) && of.week.irrigationDrainedMm > 0,
  'more that drains than is to wash salt away': (of) => washes(of) && drainedBeyondMm(of) > 0,
  'less rain than falls': (of) => isGrowing(of) && (of.planting.rainFactor ?? 1) < 1,
  'no rain at all': (of) => isGrowing(of) && of.planting.rainFactor === 0,
  'more rain than falls on the plants’ ground': (of) => isGrowing(of) && (of.planting.rainFactor ?? 1) > 1,
  'landscape under mulch': ({ planting: { coefficient }, week }) =>
    week.groundDays > 0 && coefficient.kind === 'landscape' && coefficient.mulchFactor !== undefined,
  'leafless months': (of) => isGrowing(of) && isResting(of, 'leafless'),
  'frozen ground': (of) => isGrowing(of) && isResting(of, 'frozen'),
  'days to dry': (of) => isGrowing(of) && isResting(of, 'dry-down'),
};

const isShutOff = ({ planting }: PlantingWeek) => planting.hasShutOff;
const refillsBehindShutOffs = ({ zone }: PlantingWeek) =>
  zone.plantings.filter(({ watering, hasShutOff }) => watering === 'refill' && hasShutOff).length;

/** What its zone does beside it. */
const OF_ZONES_WITH_IT: Readonly<Record<string, (of: PlantingWeek) => boolean>> = {
  'two runs a day for young plants': (of) =>
    of.ofZone.runsADay === 2 && of.zone.plantings.every(({ container }) => container === undefined),
  'a part of the ground newly wetted': (of) => newlyWetted(of) > 0 && shareIn(of, of.index) < 1,
  'all of the ground newly wetted': (of) => newlyWetted(of) > 0 && shareIn(of, of.index) === 1,
  'a part of the ground no longer wetted': (of) => newlyWetted(of) < 0 && shareIn(of, of.index - 1) < 1,
  'ground wetted in part after all of it': (of) => newlyWetted(of) < 0 && shareIn(of, of.index - 1) === 1,
  'a kept planting behind a shut-off that rests for a part of the week': (of) =>
    isShutOff(of) && !isRefill(of) && restsInWeek(of) && isComputed(of.ofZone) && of.week.openMask > 0,
  'a refill behind a shut-off that rests for a part of the week': (of) =>
    isShutOff(of) && isRefill(of) && restsInWeek(of) && isComputed(of.ofZone) && of.week.openMask > 0,
  'a refill behind a shut-off that is filled by what another decides': (of) =>
    isShutOff(of) &&
    isRefill(of) &&
    isComputed(of.ofZone) &&
    refillsBehindShutOffs(of) > 1 &&
    of.zone.rule.kind === 'planting' &&
    of.zone.rule.plantingId !== of.planting.id &&
    of.week.dueMask > 0,
  'a pot that asks for each morning by itself': (of) =>
    isInPots(of) &&
    !isRefill(of) &&
    !isShutOff(of) &&
    isComputed(of.ofZone) &&
    bits(of.ofZone.decidedMask) > 2 &&
    of.week.irrigationNetMm > 0,
};

const isCutInPart = ({ ofZone }: PlantingWeek) => ofZone.cutShare > 0 && ofZone.cutShare < 1 && ofZone.minutes > 0;

const OF_CUT_PLANTINGS: Readonly<Record<string, (of: PlantingWeek) => boolean>> = {
  'a refill that is due in a week with a cut': (of) => isRefill(of) && isCutInPart(of) && of.week.dueMask > 0,
  'a pot in a week with a cut': (of) => isInPots(of) && isCutInPart(of) && of.week.irrigationNetMm > 0,
  'a planting behind a shut-off in a week with a cut': (of) =>
    isShutOff(of) && isCutInPart(of) && of.week.irrigationNetMm > 0,
};

const OF_CHOICES: Readonly<Record<string, (choice: WeekChoice) => boolean>> = {
  'runs by day with the shut-offs that were open': ({ runs }) => hasOne(runs, ({ open }) => open !== undefined),
  'runs by day without them': ({ runs }) => hasOne(runs, ({ open }) => open === undefined),
  'a closed week': ({ closed, minutesRun, runs }) => closed === true && minutesRun === undefined && runs === undefined,
};

interface ZoneWeek {
  readonly garden: Garden;
  readonly zone: GardenZone;
  readonly week: number;
  readonly figures: ZoneFigures;
  readonly kept: number;
}

const isGiven = ({ figures: { origin } }: ZoneWeek) => origin !== 'computed';
/** Cycles that the soil needs, of a day of so many minutes. */
const neededCycles = ({ zone: { longestCycleMinutes }, figures: { minutesPerDay, runsADay } }: ZoneWeek) =>
  runsADay * Math.max(1, Math.ceil(minutesPerDay / runsADay / longestCycleMinutes - TOLERANCE));
const isInSteps = ({ zone: { timerStepMinutes }, figures: { minutesPerDay, cycles } }: ZoneWeek) => {
  const steps = minutesPerDay / cycles / timerStepMinutes;
  return cycles > 0 && Math.abs(steps - Math.round(steps)) < TOLERANCE;
};

const OF_TIMED_WEEKS: Readonly<Record<string, (of: ZoneWeek) => boolean>> = {
  'minutes given that the timer takes in more cycles than the soil needs': (of) =>
    isGiven(of) && isInSteps(of) && of.figures.cycles > neededCycles(of),
  'minutes given that the timer cannot be set to': (of) => isGiven(of) && of.figures.cycles > 0 && !isInSteps(of),
  'a closed week in which something ran': ({ figures }) => figures.origin === 'closed' && figures.cycles > 0,
};

const daysBefore = ({ zone, week }: ZoneWeek) => allowedMask(zone, Math.max(0, week - 1));
const isCutWeek = ({ garden, week }: ZoneWeek) => allowedLitres(garden, week, 0) !== undefined;

const OF_LIMITED_WEEKS: Readonly<Record<string, (of: ZoneWeek) => boolean>> = {
  'a week without a watering day': ({ zone, week }) => allowedMask(zone, week) === 0,
  'other watering days than in the week before': (of) => allowedMask(of.zone, of.week) !== daysBefore(of),
  'minutes given in a week without a watering day': ({ zone, week, figures }) =>
    allowedMask(zone, week) === 0 && figures.minutes > 0,
  'a cut that takes a part': ({ kept, figures }) => kept > 0 && kept < 1 && figures.minutes > 0,
  'a cut that takes all': ({ kept }) => kept === 0,
  'a cut that leaves an exempt zone alone': (of) =>
    isCutWeek(of) && of.zone.cutExempt === true && of.figures.minutes > 0,
  'a cut that leaves a zone alone': (of) => isCutWeek(of) && of.kept === 1 && of.figures.minutes > 0,
  'minutes given in a week of a cut': (of) => isCutWeek(of) && of.figures.origin !== 'computed',
};

/** What lies in a planting on a day, every third of the season. */
interface LaidDay {
  readonly lines: readonly LineFlow[];
  readonly pressureKpa: number | undefined;
}

function laidDays({ span, supply }: Garden, planting: GardenPlanting): readonly LaidDay[] {
  return daysOf(span)
    .filter((day, index) => index % 3 === 0 && planting.from <= day && day <= planting.to)
    .map((day) => {
      const source = supply.sources.filter(({ from }) => from <= day).at(-1);
      return { lines: flowsOn(planting, supply, day), pressureKpa: source?.pressureKpa };
    });
}

const watering = ({ lines }: LaidDay) => lines.filter(({ flowLph }) => flowLph > 0);
const hasLine = (holds: (of: LineFlow) => boolean) => (day: LaidDay) =>
  day.pressureKpa !== undefined && watering(day).some(holds);

const OF_LAID_DAYS: Readonly<Record<string, (of: LaidDay) => boolean>> = {
  'several lines at once': (day) => watering(day).length > 1,
  'lines of unlike efficiency at once': (day) => new Set(watering(day).map(({ line }) => line.efficiency)).size > 1,
  'a pressure that is not known': ({ pressureKpa }) => pressureKpa === undefined,
  'solid tube in front': ({ lines, pressureKpa }) =>
    pressureKpa !== undefined && lines.some(({ line }) => line.kind === 'solid' && line.lengthM !== undefined),
  'a dead end': hasLine(({ line }) => line.topology === 'dead-end'),
  'a loop': hasLine(({ line }) => line.topology === 'loop'),
  'a line uphill': hasLine(({ line }) => line.riseMPerM > 0),
  'a plain line': hasLine(({ line }) => !line.compensating),
  'a compensating line that is full': hasLine(({ line, flowLph }) => line.compensating && flowLph === line.flowLph),
  'a compensating line that is not': hasLine(({ line, flowLph }) => line.compensating && flowLph < line.flowLph),
  'runs of more than 2,000 outlets': hasLine(({ line }) => line.emitters / (line.runs ?? 1) > 2000),
  'one outlet round each plant': hasLine(({ line }) => line.kind === 'point' && line.runs === undefined),
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
