/** The minutes a watering day that a planting alone would ask for. */
import { runMinutes } from '../../../engine/application/run-time.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { code, days, depth, input, minutes, rate } from '../trace-value.ts';
import { weekLines } from './lines.ts';
import { goalLabel } from './need.ts';
import { type CourseDay, courseDays, isOpenOn, type PlantingCell, totalOf } from './planting-cell.ts';

/** Less than this drained is rounding. */
const LEAST_DRAINED_MM = 1e-9;
const TOLERANCE = 1e-9;

export function minutesAskedStep(cell: PlantingCell): TraceStep {
  if (!cell.isDue || cell.course.last < 0 || cell.at('neededMm') === 0) {
    return asked(cell, 'nothing', [input('need', depth(cell.at('neededMm')))]);
  }
  if (isBeyondMinutes(cell)) {
    return asked(cell, 'no-line', [input('need', depth(cell.at('neededMm'))), input('rate-on-watering-days', rate(0))]);
  }
  return byDivision(cell) ?? byTrial(cell);
}

/** Whether it needs water and no line brings it any, so that no run would be long enough. */
export function isBeyondMinutes({ need }: PlantingCell): boolean {
  return need.minutesPerDay === Number.POSITIVE_INFINITY;
}

/** Where no day is short: from the last morning on which the soil is full, or the week's start, one division. */
function byDivision(cell: PlantingCell): TraceStep | undefined {
  const { course, dayOf } = cell;
  const wanted = cell.at('minutesWanted');
  const watered = courseDays(cell, wanted, course.mask).filter(({ index }) => index <= course.last);
  const lastFull = watered.findLastIndex(({ index, drainedMm }) => index < course.last && drainedMm > LEAST_DRAINED_MM);
  const span = watered.slice(lastFull + 1);
  const [start] = span;
  if (start === undefined) return undefined;
  const rates = ratesOf(cell, span);
  const demand = totalOf(span, 'etcMm');
  const rain = totalOf(span, 'soakedMm');
  const mmPerMinute = rates.reduce((sum, { netRate, dayCount }) => sum + (netRate / 60) * dayCount, 0);
  if (mmPerMinute === 0) return undefined;
  const found = runMinutes(Math.max(0, start.startMm + demand - rain - course.goalMm), mmPerMinute);
  if (!(Math.abs(found - wanted) <= TOLERANCE * Math.max(1, wanted))) return undefined;
  const fromTo = { day: start.day, lastDay: dayOf(course.last) };
  return asked(cell, 'division', [
    input({ id: 'day-depletion-start', day: start.day }, depth(start.startMm)),
    input({ id: 'demand-between', ...fromTo }, depth(demand)),
    input({ id: 'rain-between', ...fromTo }, depth(rain)),
    input(goalLabel(cell), depth(course.goalMm)),
    ...rates.flatMap(({ netRate, dayCount, which }) => [
      input({ id: 'net-rate', ...which }, rate(netRate)),
      input({ id: 'watering-days', ...which }, days(dayCount)),
    ]),
  ]);
}

/** Watering days of the span by line. */
function ratesOf(cell: PlantingCell, span: readonly CourseDay[]) {
  return weekLines(cell)
    .map(({ indexes, netRate, which }) => ({
      netRate,
      which,
      dayCount: span.filter(({ index }) => indexes.includes(index) && isWateringDay(cell, index)).length,
    }))
    .filter(({ dayCount }) => dayCount > 0);
}

/** Where a day is short the plants use less, and the minutes are found by trying: every figure of the balance is shown. */
function byTrial(cell: PlantingCell): TraceStep {
  const { course, days: daily } = cell;
  const upToLast = cell.daily.filter(({ index }) => index <= course.last);
  return asked(cell, 'trial', [
    input('available-water', depth(daily.demand.tawMm)),
    input('depletion-start', depth(course.depletionMm)),
    input(goalLabel(cell), depth(course.goalMm)),
    ...upToLast.flatMap(({ index, day, etcMm, soakedMm, rawMm }) => [
      input({ id: 'day-demand', day }, depth(etcMm)),
      input({ id: 'day-rain-soaked', day }, depth(soakedMm)),
      input({ id: 'day-readily-available', day }, depth(rawMm)),
      ...(isWateringDay(cell, index)
        ? [input({ id: 'day-net-rate', day }, rate(60 * (daily.netMmPerMinute[index] as number)))]
        : []),
    ]),
  ]);
}

function isWateringDay({ course }: PlantingCell, index: number): boolean {
  return isOpenOn(course.mask, index - course.start);
}

function asked(
  cell: PlantingCell,
  variant: Extract<TraceStep, { id: 'minutes-asked' }>['variant'],
  inputs: readonly TraceValue[],
): TraceStep {
  return {
    id: 'minutes-asked',
    variant,
    source: [{ id: 'solved-for-irrigation', cite: 'FAO-56 eq. 84–88' }],
    inputs,
    result: variant === 'no-line' ? code('limit', 'no-run-is-enough') : minutes(cell.at('minutesWanted')),
  };
}
