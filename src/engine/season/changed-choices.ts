/** Where two sets of choices for one zone differ in what is watered. */
import type { GardenZone, WeekChoice } from '../garden.ts';
import { isSame } from './same-demand.ts';
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

const FIELDS = ['minutes', 'minutesRun', 'closed', 'runsAreSome', 'openDays', 'runs'] as const;

function isSameChoice(one: WeekChoice | undefined, other: WeekChoice | undefined): boolean {
  return FIELDS.every((field) => isSame(one?.[field], other?.[field]));
}
