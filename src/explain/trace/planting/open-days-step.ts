/** On how many of the zone's watering days a planting's line is open. */
import { fewestOpenDays, openMasks } from '../../../engine/season/open-days.ts';
import { depletionAfter, setOut } from '../../../engine/season/week-course.ts';
import { zoneFigure } from '../../../engine/season/zone-week.ts';
import { placesIn } from '../day-span.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { days, depth, minutes, words } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';

export function openDaysStep(cell: PlantingCell): TraceStep {
  const { zone, zoneSeason, week, planting } = cell;
  const perDay = zoneFigure(zoneSeason, 'minutesPerDay', week);
  const masks = openMasks(zone.wateringDays);
  const all = masks.length - 1;
  const run = minutes('Minutes a watering day of the zone', perDay);
  const watering = days('Watering days of the week', all);
  if (perDay === 0) {
    return step(cell, 'The zone does not run this week.', 'open days = 0 where the zone does not run', [run]);
  }
  if (!planting.hasShutOff) {
    return step(
      cell,
      'No shut-off stands before it: it is open whenever the zone runs.',
      'open days = watering days in the ground',
      [watering, ...inGround(cell, masks, all)],
    );
  }
  const byHand = zone.choices.get(week)?.openDays?.get(planting.id);
  if (byHand !== undefined) {
    return step(cell, 'Its shut-off was set by hand.', 'open days = days set by hand, at most the watering days', [
      days('Open days set by hand', byHand),
      watering,
      ...inGround(cell, masks, Math.min(byHand, all)),
    ]);
  }
  if (!cell.isDue || cell.need.minutesPerDay === 0) {
    return closedStep(cell, 'It asks for no water this week, so its shut-off stays closed.', 'none');
  }
  if (cell.need.minutesPerDay === Number.POSITIVE_INFINITY) {
    return closedStep(cell, 'No line brings it water, so its shut-off stays closed.', 'none that a line could bring');
  }
  return fewestStep(cell, masks, perDay);
}

function closedStep(cell: PlantingCell, says: string, asked: string): TraceStep {
  return step(cell, says, 'open days = 0 where nothing is asked for, or nothing can come', [
    words('Water asked for', asked),
  ]);
}

function fewestStep(cell: PlantingCell, masks: readonly number[], perDay: number): TraceStep {
  const { start, depletionMm } = cell.course;
  const trial = { ...cell.course };
  const chosen = fewestOpenDays(trial, masks, perDay);
  const all = masks.length - 1;
  const tried = masks.slice(1, Math.min(chosen + 1, all)).flatMap((mask, place) => {
    setOut(trial, start, mask, depletionMm);
    const name = openName(place + 1);
    return trial.last < 0
      ? [words(`${name}: depletion reached`, 'none of them in the ground')]
      : [
          depth(`${name}: depletion reached`, depletionAfter(trial, perDay)),
          depth(`${name}: depletion to reach`, trial.goalMm),
        ];
  });
  return step(
    cell,
    'Its shut-off is opened on as few of the zone’s watering days as its need allows, spread over the week and ending on the last.',
    'open days = the fewest with which the depletion reached is not above the depletion to reach; all of them where none do',
    [
      minutes('Minutes a watering day of the zone', perDay),
      days('Watering days of the week', all),
      ...tried,
      ...inGround(cell, masks, chosen),
    ],
  );
}

const openName = (open: number) => (open === 1 ? '1 day open' : `${open} days open`);

/** Days out of the ground are named where the planting comes or goes within the week. */
function inGround({ ground, course }: PlantingCell, masks: readonly number[], open: number): readonly TraceValue[] {
  if (ground.end - ground.first === 7) return [];
  const mask = masks[open] as number;
  const there = placesIn(ground, (place) => ((mask >> (place - course.start)) & 1) === 1).length;
  return [days('Of these in the ground', there)];
}

function step(cell: PlantingCell, says: string, formula: string, inputs: readonly TraceValue[]): TraceStep {
  return {
    id: 'open-days',
    title: 'Open days',
    says,
    formula,
    source: 'A choice of this kit; with a shut-off, least water that meets the need',
    inputs,
    result: days('Open days', cell.at('openDays')),
  };
}
