/** The minutes a watering day that a planting alone would ask for. */
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { days, depth, minutes, rate, words } from '../trace-value.ts';
import { type CourseDay, courseDays } from './course-days.ts';
import { linePieces } from './line-pieces.ts';
import { goalLabel } from './need-steps.ts';
import type { PlantingCell } from './planting-cell.ts';

const LABEL = 'Minutes a watering day asked for';
const SAYS = 'So long the zone would have to run on each watering day for this planting alone.';
const SOURCE = 'FAO-56 eq. 84 to 88, solved for the irrigation';
/** Less than this drained is rounding. */
const LEAST_DRAINED_MM = 1e-9;
const TOLERANCE = 1e-9;

export function askedMinutesStep(cell: PlantingCell): TraceStep {
  if (!cell.isDue || cell.course.last < 0 || cell.at('neededMm') === 0) return nothingAskedStep(cell);
  if (cell.need.minutesPerDay === Number.POSITIVE_INFINITY) return beyondHelpStep(cell);
  return byDivision(cell) ?? byTrial(cell);
}

function nothingAskedStep(cell: PlantingCell): TraceStep {
  return asked(cell, 'minutes = 0 where the need is 0', [depth('Net need', cell.at('neededMm'))]);
}

function beyondHelpStep(cell: PlantingCell): TraceStep {
  return {
    ...asked(cell, 'no minutes where the rate is 0', [
      depth('Net need', cell.at('neededMm')),
      rate('Net application rate on its watering days', 0),
    ]),
    says: 'It needs water and no line brings it any, so no run would be long enough.',
    result: words(LABEL, 'no run is long enough'),
  };
}

/** Where no day is short: from the last morning on which the soil is full, or the week's start, one division. */
function byDivision(cell: PlantingCell): TraceStep | undefined {
  const { course, dayName } = cell;
  const wanted = cell.at('minutesWanted');
  const watered = courseDays(course, wanted, course.mask).filter(({ place }) => place <= course.last);
  const lastFull = watered.findLastIndex(({ place, drainedMm }) => place < course.last && drainedMm > LEAST_DRAINED_MM);
  const span = watered.slice(lastFull + 1);
  const [start] = span;
  if (start === undefined) return undefined;
  const rates = ratesOf(cell, span);
  const demand = span.reduce((sum, { etcMm }) => sum + etcMm, 0);
  const rain = span.reduce((sum, { soakedMm }) => sum + soakedMm, 0);
  const gain = rates.reduce((sum, { netRate, dayCount }) => sum + netRate * dayCount, 0);
  const found = Math.max(0, (60 * (start.startMm + demand - rain - course.goalMm)) / gain);
  if (!(Math.abs(found - wanted) <= TOLERANCE * Math.max(1, wanted))) return undefined;
  const from = `${dayName(start.place)} to ${dayName(course.last)}`;
  return asked(
    cell,
    'minutes = 60 × (depletion at the start + demand − rain − depletion to reach) / (net rate × watering days), at least 0',
    [
      depth(`Depletion at the start of ${dayName(start.place)}`, start.startMm),
      depth(`Demand, ${from}`, demand),
      depth(`Rain that soaks in, ${from}`, rain),
      depth(goalLabel(cell), course.goalMm),
      ...rates.flatMap(({ netRate, dayCount, suffix }) => [
        rate(`Net application rate${suffix}`, netRate),
        days(`Watering days${suffix}`, dayCount),
      ]),
    ],
  );
}

/** Watering days of the span by line. */
function ratesOf(cell: PlantingCell, span: readonly CourseDay[]) {
  return linePieces(cell)
    .map(({ places, netRate, suffix }) => ({
      netRate,
      suffix,
      dayCount: span.filter(({ place }) => places.includes(place) && isWateringDay(cell, place)).length,
    }))
    .filter(({ dayCount }) => dayCount > 0);
}

/** Where a day is short the plants use less, and the minutes are found by trying: every figure of the balance is shown. */
function byTrial(cell: PlantingCell): TraceStep {
  const { course, days: daily, dayName } = cell;
  const upToLast = cell.daily.filter(({ place }) => place <= course.last);
  return asked(
    cell,
    'the least minutes with which the daily balance, Ks included, ends the last watering day at the depletion to reach; ' +
      'found by trying, below the least that would do if no day were short',
    [
      depth('Total available water TAW', daily.demand.tawMm),
      depth('Depletion at the week’s start', course.depletionMm),
      depth(goalLabel(cell), course.goalMm),
      ...upToLast.flatMap(({ place, etcMm, soakedMm, rawMm }) => [
        depth(`${dayName(place)}, ETc`, etcMm),
        depth(`${dayName(place)}, rain that soaks in`, soakedMm),
        depth(`${dayName(place)}, RAW`, rawMm),
        ...(isWateringDay(cell, place)
          ? [rate(`${dayName(place)}, net application rate`, 60 * (daily.netMmPerMinute[place] as number))]
          : []),
      ]),
    ],
  );
}

function isWateringDay({ course }: PlantingCell, place: number): boolean {
  return ((course.mask >> (place - course.start)) & 1) === 1;
}

function asked(cell: PlantingCell, formula: string, inputs: readonly TraceValue[]): TraceStep {
  return {
    id: 'minutes-asked',
    title: LABEL,
    says: SAYS,
    formula,
    source: SOURCE,
    inputs,
    result: minutes(LABEL, cell.at('minutesWanted')),
  };
}
