/** The minutes that a zone runs on each watering day of a week, from what its plantings ask for. */
import type { GardenZone, WeekChoice } from '../../src/engine/garden.ts';
import type { MinutesOrigin } from '../../src/engine/season/season.ts';
import { groundDays, isWatered, type Need } from './need.ts';
import type { PlantingFacts } from './planting-facts.ts';

/** A planting with what it asks for, at the start of a week. */
export interface Asking {
  readonly facts: PlantingFacts;
  readonly need: Need;
}

export interface ZoneMinutes {
  readonly wanted: number;
  readonly perDay: number;
  readonly cycles: number;
  readonly origin: MinutesOrigin;
}

export function zoneMinutes(zone: GardenZone, week: number, asking: readonly Asking[]): ZoneMinutes {
  const wanted = wantedMinutes(zone, week, asking);
  const choice = zone.choices.get(week) ?? {};
  const set = chosen(choice);
  if (set === undefined) return { wanted, ...roundedUp(zone, wanted), origin: 'computed' };
  // A number given by hand is run as it is, in as many cycles as the soil needs.
  const perDay = set.minutes / wateringDayCount(zone.wateringDays);
  return {
    wanted,
    perDay,
    cycles: perDay === 0 ? 0 : Math.max(1, Math.ceil(perDay / zone.longestCycleMinutes)),
    origin: set.origin,
  };
}

function chosen(choice: WeekChoice): { readonly minutes: number; readonly origin: MinutesOrigin } | undefined {
  if (choice.minutesRun !== undefined) return { minutes: choice.minutesRun, origin: 'run' };
  if (choice.closed) return { minutes: 0, origin: 'closed' };
  if (choice.minutes !== undefined) return { minutes: choice.minutes, origin: 'hand-set' };
  return undefined;
}

function roundedUp(zone: GardenZone, wanted: number): { readonly perDay: number; readonly cycles: number } {
  const step = zone.timerStepMinutes;
  const steps = Math.ceil(wanted / step - 1e-9);
  if (steps <= 0) return { perDay: 0, cycles: 0 };
  const cycles = Math.ceil(steps / stepsOfACycle(zone));
  return { perDay: cycles * Math.ceil(steps / cycles) * step, cycles };
}

/** The longest cycle is a whole number of steps, and at least one. */
function stepsOfACycle({ longestCycleMinutes, timerStepMinutes }: GardenZone): number {
  if (longestCycleMinutes === Number.POSITIVE_INFINITY) return Number.MAX_SAFE_INTEGER;
  // 1.2 minutes are twelve steps of 0.1, though their quotient falls short of 12 in the last bit.
  return Math.max(1, Math.floor(longestCycleMinutes / timerStepMinutes + 1e-9));
}

function wantedMinutes(zone: GardenZone, week: number, asking: readonly Asking[]): number {
  const mask = zone.wateringDays;
  // One without a line can be given nothing, whatever the zone runs.
  const watered = asking.filter((request) => litresPerMinute(request, week, mask) > 0);
  const rule = zone.rule;
  if (rule.kind === 'planting') {
    const named = watered.find(({ facts }) => facts.planting.id === rule.plantingId);
    if (named !== undefined) return named.need.minutes;
  }
  const open = watered.filter(({ facts }) => !facts.planting.hasShutOff);
  const heard = open.length > 0 ? open : watered;
  if (heard.length === 0) return 0;
  if (rule.kind !== 'area-weighted') return Math.max(...heard.map(({ need }) => need.minutes));
  const weights = heard.map((request) => litresPerMinute(request, week, mask));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return heard.reduce((sum, { need }, place) => sum + (need.minutes * (weights[place] ?? 0)) / total, 0);
}

/** Litres that a minute on each watering day brings over the week. */
function litresPerMinute({ facts }: Asking, week: number, mask: number): number {
  const depth = wateredDays(facts, week, mask).reduce((sum, { day }) => sum + day.netMmPerMinute, 0);
  return depth * facts.planting.areaM2;
}

function wateredDays(facts: PlantingFacts, week: number, mask: number): ReturnType<typeof groundDays> {
  return groundDays(facts, week).filter(({ offset }) => isWatered(mask, offset));
}

export function wateringDayCount(mask: number): number {
  return [0, 1, 2, 3, 4, 5, 6].filter((offset) => isWatered(mask, offset)).length;
}
