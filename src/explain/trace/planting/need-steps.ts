/** How much water a planting asks for in its week, or why it asks for none. */
import { placesIn } from '../day-span.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { depth, words } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';
import { refillStep } from './refill-step.ts';
import { targetStep } from './soil-steps.ts';

const BALANCE = 'FAO-56 eq. 85 to 88';

export function needSteps(cell: PlantingCell): readonly TraceStep[] {
  const refill = cell.planting.watering === 'refill' ? [refillStep(cell)] : [];
  if (cell.course.last < 0) return [...refill, noWateringDayStep(cell)];
  if (!cell.isDue) return [...refill, leftAloneStep(cell)];
  return [...refill, targetStep(cell), goalStep(cell), needStep(cell)];
}

function goalStep(cell: PlantingCell): TraceStep {
  const { days, course } = cell;
  const tail = cell.daily.filter(({ place }) => place > course.last);
  return {
    id: 'goal',
    title: 'Depletion to reach',
    says:
      'The last watering of the week must also serve the days after it, so it may have to fill the soil a little more; ' +
      'rain to come lets it fill less, as long as no day starts beyond the allowed depletion.',
    formula:
      'depletion to reach = max(0, the lesser of T − (demand − rain) of the days after, and the greatest that they allow)',
    source: 'A choice of this kit: the week ends at the target',
    inputs: [
      depth('Depletion to come back to T', days.demand.targetMm),
      depth(
        'Demand of the days after',
        tail.reduce((sum, { etcMm }) => sum + etcMm, 0),
      ),
      depth(
        'Rain of the days after',
        tail.reduce((sum, { soakedMm }) => sum + soakedMm, 0),
      ),
      ...(tail.length > 0 ? [depth(MOST_BEFORE, course.allowedMm)] : []),
    ],
    result: depth(goalLabel(cell), course.goalMm),
  };
}

const MOST_BEFORE = 'Greatest from which none of the days after starts beyond its RAW';

export function goalLabel({ course, dayName }: PlantingCell): string {
  return `Depletion to reach by the end of ${dayName(course.last)}`;
}

function needStep(cell: PlantingCell): TraceStep {
  const { course, days, dayName } = cell;
  const places = placesIn({ first: course.first, end: course.last + 1 });
  return needed(cell, {
    says: 'This much water must reach the roots in this week, beyond the rain.',
    formula:
      'from day to day Dr = max(0, Dr + demand less rain); need = max(0, Dr on the last watering day − depletion to reach)',
    source: BALANCE,
    inputs: [
      depth('Depletion at the week’s start', course.depletionMm),
      ...places.map((place) =>
        depth(
          `${dayName(place)}, demand less rain`,
          (days.demand.etcMm[place] as number) - (days.soakedMm[place] as number),
        ),
      ),
      depth(goalLabel(cell), course.goalMm),
    ],
  });
}

function leftAloneStep(cell: PlantingCell): TraceStep {
  return needed(cell, {
    says: 'It is left alone this week: the soil still holds enough.',
    formula: 'need = 0 where it is not filled this week',
    source: 'A choice of this kit',
    inputs: [words('Filled this week', 'no')],
  });
}

function noWateringDayStep(cell: PlantingCell): TraceStep {
  return needed(cell, {
    says: 'None of the week’s watering days falls into its days in the ground, so nothing can be asked for.',
    formula: 'need = 0 without a watering day in the ground',
    source: 'A choice of this kit',
    inputs: [words('Watering day in the ground', 'none')],
  });
}

function needed(
  cell: PlantingCell,
  rest: Pick<TraceStep, 'says' | 'formula' | 'source'> & { readonly inputs: readonly TraceValue[] },
): TraceStep {
  return { id: 'need', title: 'Net need', ...rest, result: depth('Net need', cell.at('neededMm')) };
}
