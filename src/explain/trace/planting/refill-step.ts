/** Whether a planting that is watered deep and seldom is filled this week. */
import { placesIn } from '../day-span.ts';
import type { TraceStep } from '../trace-step.ts';
import { depth, words } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';

/** The day on which, left alone, it would be the furthest beyond its allowed depletion, or the nearest to it. */
export function refillStep(cell: PlantingCell): TraceStep {
  const { rawMm, end } = cell.days.demand;
  const { start, mask, first, depletionMm } = cell.course;
  const horizon = Math.min(end, start + 7 + 31 - Math.clz32(mask));
  const places = placesIn({ first, end: horizon });
  const alone = leftAlone(cell, places, depletionMm);
  const beyond = (offset: number) => (alone[offset] as number) - (rawMm[places[offset] as number] as number);
  const driest = places.reduce((worst, _, offset) => (beyond(offset) > beyond(worst) ? offset : worst), 0);
  const place = places[driest] as number;
  const day = `${cell.dayName(place)}${place < start + 7 ? '' : ' next week'}`;
  return {
    id: 'refill-due',
    title: 'Filled this week?',
    says: 'Watered deep and seldom: it is filled only when it would otherwise dry too far before the last watering day of next week.',
    formula:
      'yes where the depletion, left alone at full demand, would pass RAW on some day up to then; the day nearest to it is shown',
    source:
      'Irrigation when RAW is reached: FAO-56 Example 38 (pp. 172-173); looking a week ahead is a choice of this kit',
    inputs: [
      depth(`Depletion at the end of ${day}, if left alone`, alone[driest] as number),
      depth(`Readily available water RAW, ${day}`, rawMm[place] as number),
    ],
    result: words('Filled this week', cell.isDue ? 'yes' : 'no'),
  };
}

/** Depletion at each day's end without irrigation, were the plants never short. */
function leftAlone({ days }: PlantingCell, places: readonly number[], startMm: number): readonly number[] {
  let depletion = startMm;
  return places.map((place) => {
    depletion = Math.max(0, depletion + (days.demand.etcMm[place] as number) - (days.soakedMm[place] as number));
    return depletion;
  });
}
