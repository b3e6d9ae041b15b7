/** On how many of the zone's watering days a planting's line is open. */
import { fewestOpenDays, openMasks } from '../../../engine/season/open-days.ts';
import { depletionAfter, startCourse } from '../../../engine/season/week-course.ts';
import { daysIn } from '../day-span.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { code, days, depth, input, minutes } from '../trace-value.ts';
import { isBeyondMinutes } from './minutes-asked.ts';
import { isOpenOn, type PlantingCell } from './planting-cell.ts';

export function openDaysStep(cell: PlantingCell): TraceStep {
  const { zone, week, planting, minutesPerDay } = cell;
  const masks = openMasks(zone.wateringDays);
  const all = masks.length - 1;
  const watering = input('week-watering-days', days(all));
  if (minutesPerDay === 0) return step(cell, 'zone-idle', [input('zone-minutes-per-day', minutes(0))]);
  if (!planting.hasShutOff) return step(cell, 'no-shut-off', [watering, ...inGround(cell, masks, all)]);
  const byHand = zone.choices.get(week)?.openDays?.get(planting.id);
  if (byHand !== undefined) {
    const open = Math.min(byHand, all);
    return step(cell, 'hand-set', [input('hand-set-days', days(byHand)), watering, ...inGround(cell, masks, open)]);
  }
  if (!cell.isDue || cell.need.minutesPerDay === 0)
    return step(cell, 'nothing-asked', [input('minutes-asked', minutes(0))]);
  if (isBeyondMinutes(cell)) return step(cell, 'no-line', [input('minutes-asked', code('limit', 'no-run-is-enough'))]);
  const { open, tried } = fewest(cell, masks);
  return step(cell, 'fewest', [
    input('zone-minutes-per-day', minutes(minutesPerDay)),
    watering,
    ...tried,
    ...inGround(cell, masks, open),
  ]);
}

/** The fewest days that meet its need, with the outcome of each number of days up to it; all days are not tried. */
function fewest(
  { course, minutesPerDay }: PlantingCell,
  masks: readonly number[],
): { readonly open: number; readonly tried: readonly TraceValue[] } {
  const { start, depletionMm } = course;
  const trial = { ...course };
  const open = fewestOpenDays(trial, masks, minutesPerDay);
  const tried = masks.slice(1, Math.min(open + 1, masks.length - 1)).flatMap((mask, before) => {
    startCourse(trial, start, mask, depletionMm);
    const openDays = before + 1;
    return trial.last < 0
      ? [input({ id: 'depletion-reached', openDays }, code('limit', 'out-of-ground'))]
      : [
          input({ id: 'depletion-reached', openDays }, depth(depletionAfter(trial, minutesPerDay))),
          input({ id: 'depletion-to-reach', openDays }, depth(trial.goalMm)),
        ];
  });
  return { open, tried };
}

/** Days out of the ground are named where the planting comes or goes within the week. */
function inGround({ ground, course }: PlantingCell, masks: readonly number[], open: number): readonly TraceValue[] {
  if (ground.end - ground.first === 7) return [];
  const mask = masks[open] as number;
  return [input('of-these-in-ground', days(daysIn(ground, (index) => isOpenOn(mask, index - course.start)).length))];
}

function step(
  cell: PlantingCell,
  variant: Extract<TraceStep, { id: 'open-days' }>['variant'],
  inputs: readonly TraceValue[],
): TraceStep {
  return { id: 'open-days', variant, source: [{ id: 'choice-open-days' }], inputs, result: days(cell.at('openDays')) };
}
