/** Where two sets of choices for one zone differ in what is watered. */
import type { DayRun, GardenZone, WeekChoice } from '../garden.ts';
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
    isSameMap(one?.openDays, other?.openDays, Object.is) &&
    isSameMap(one?.runs, other?.runs, isSameRun)
  );
}

function isSameRun(one: DayRun, other: DayRun | undefined): boolean {
  return one.minutes === other?.minutes && isSameSet(one.open, other.open);
}

function isSameSet(one: ReadonlySet<string> | undefined, other: ReadonlySet<string> | undefined): boolean {
  if (one === undefined || other === undefined) return one === other;
  return one.size === other.size && [...one].every((id) => other.has(id));
}

function isSameMap<Key, Value>(
  one: ReadonlyMap<Key, Value> | undefined,
  other: ReadonlyMap<Key, Value> | undefined,
  isSame: (one: Value, other: Value | undefined) => boolean,
): boolean {
  if (one === undefined || other === undefined) return one === other;
  return one.size === other.size && [...one].every(([key, value]) => isSame(value, other.get(key)));
}
