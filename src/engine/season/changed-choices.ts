/** Where two sets of choices for one zone differ in what is watered. */
import type { GardenZone, WeekChoice } from '../garden.ts';
import { spanning, type WeekSpan } from './week-span.ts';

/** The span of the weeks whose choices differ, notes apart; undefined where there is none. */
export function changedChoices(one: GardenZone['choices'], other: GardenZone['choices']): WeekSpan | undefined {
  if (one === other) return undefined;
  let changed: WeekSpan | undefined;
  for (const week of new Set([...one.keys(), ...other.keys()])) {
    if (!isSameChoice(one.get(week), other.get(week))) changed = spanning(changed, { first: week, last: week });
  }
  return changed;
}

function isSameChoice(one: WeekChoice | undefined, other: WeekChoice | undefined): boolean {
  return (
    one?.minutes === other?.minutes &&
    one?.minutesRun === other?.minutesRun &&
    one?.closed === other?.closed &&
    isSameOpenDays(one?.openDays, other?.openDays)
  );
}

function isSameOpenDays(one: WeekChoice['openDays'], other: WeekChoice['openDays']): boolean {
  if (one === undefined || other === undefined) return one === other;
  return one.size === other.size && [...one].every(([planting, days]) => other.get(planting) === days);
}
