/** On which watering days of a week a planting's line is open. */
import type { GardenZone } from '../../src/engine/garden.ts';
import { groundDays, isWatered, meetsGoal, type NeedQuestion } from './need.ts';
import { type Asking, wateringDayCount } from './zone-minutes.ts';

/** A mask of days, bit 0 = the week's first. Out of the ground the line is closed. */
export function openMask(zone: GardenZone, asking: Asking, question: NeedQuestion, minutesPerDay: number): number {
  const count = openDays(zone, asking, question, minutesPerDay);
  const ground = groundDays(question.facts, question.week).reduce((mask, { offset }) => mask | (1 << offset), 0);
  return maskOf(zone.wateringDays, count) & ground;
}

function openDays(zone: GardenZone, { facts, need }: Asking, question: NeedQuestion, minutesPerDay: number): number {
  const all = wateringDayCount(zone.wateringDays);
  if (minutesPerDay === 0) return 0;
  if (!facts.planting.hasShutOff) return all;
  const byHand = zone.choices.get(question.week)?.openDays?.get(facts.planting.id);
  if (byHand !== undefined) return Math.min(byHand, all);
  // It asks for nothing, or there is no line that could bring it.
  if (need.minutes === 0 || need.minutes === Number.POSITIVE_INFINITY) return 0;
  for (let count = 1; count < all; count++) {
    if (meetsGoal({ ...question, mask: maskOf(zone.wateringDays, count) }, minutesPerDay)) return count;
  }
  return all;
}

/** `count` of the watering days, at the ends of `count` equal parts of their row. */
function maskOf(mask: number, count: number): number {
  const offsets = [0, 1, 2, 3, 4, 5, 6].filter((offset) => isWatered(mask, offset));
  let open = 0;
  for (let part = 1; part <= count; part++) {
    open |= 1 << (offsets[Math.ceil((part * offsets.length) / count) - 1] ?? 0);
  }
  return open;
}
