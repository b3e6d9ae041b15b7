/** Rain or reference ET of a whole week, in the plan's unit. */
import { type DayNumber, dayNumber, isoDate } from '../../engine/calendar.ts';
import { fromSi, toSi, type UnitSystem, unitOf } from '../../engine/units.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { quantity } from '../../plan/schema/quantity.ts';
import { expectedInstead } from './check-value.ts';
import { type Entry, type EntryContext, refused } from './entry.ts';
import { type AmountUnit, parseAmount } from './parse-amount.ts';

const DEPTH_UNITS: Partial<Record<AmountUnit, UnitSystem>> = { inch: 'us', millimetre: 'metric' };

export function weatherEntry(kind: 'eto' | 'rain', week: number, text: string, context: EntryContext): Entry {
  const { plan, season, locale } = context;
  const unit = unitOf('depth', plan.units).name;
  const what = kind === 'rain' ? 'rain' : 'reference ET';
  const hint = `The ${what} of the whole week goes here, in ${unit}.`;
  const amount = parseAmount(text, locale);
  if (amount.kind === 'unread') return refused(`${amount.why}. ${hint}`);
  const firstDay = season.garden.span.firstDay + 7 * week;
  const before = weekEntered(plan.log?.weeks, firstDay)?.[kind];
  if (amount.kind === 'empty') {
    if (before !== undefined) return change(kind, firstDay, undefined);
    return hasDays(context, kind, firstDay)
      ? refused(`The ${what} of this week was entered by day: clear the days where the weather is kept.`)
      : { kind: 'same' };
  }
  const system = amount.unit === undefined ? plan.units : DEPTH_UNITS[amount.unit];
  if (system === undefined) return refused(`“${text.trim()}” is no depth of water. ${hint}`);
  const depth = system === plan.units ? amount.value : converted(amount.value, system, plan.units);
  const expected = expectedInstead(quantity('depth', plan.units), depth);
  if (expected !== undefined) return refused(`“${text.trim()}” does not fit: write ${expected}.`);
  return depth === before ? { kind: 'same' } : change(kind, firstDay, depth);
}

function change(kind: 'eto' | 'rain', firstDay: DayNumber, depth: number | undefined): Entry {
  const week = isoDate(firstDay);
  const edit: Edit =
    kind === 'rain' ? { type: 'set-week-rain', week, rain: depth } : { type: 'set-week-eto', week, eto: depth };
  return { kind: 'edit', edit };
}

function converted(value: number, from: UnitSystem, to: UnitSystem): number {
  return Number(fromSi(toSi(value, 'depth', from), 'depth', to).toPrecision(6));
}

/** A week's total may be kept under any day of the week. */
function weekEntered<T>(weeks: Readonly<Record<string, T>> | undefined, firstDay: DayNumber): T | undefined {
  return Object.entries(weeks ?? {}).find(([day]) => isInWeek(dayNumber(day), firstDay))?.[1];
}

function hasDays({ season }: EntryContext, kind: 'eto' | 'rain', firstDay: DayNumber): boolean {
  const field = kind === 'rain' ? 'rainMm' : 'etoMm';
  const { days } = season.garden.observed;
  return [0, 1, 2, 3, 4, 5, 6].some((offset) => days.get(firstDay + offset)?.[field] !== undefined);
}

const isInWeek = (day: DayNumber, firstDay: DayNumber): boolean => day >= firstDay && day < firstDay + 7;
