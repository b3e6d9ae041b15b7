/** Rain or reference ET of a whole week, in the plan's unit. */
import { type DayNumber, dayNumber, isoDate } from '../../engine/calendar.ts';
import { fromSi, toSi, type UnitSystem } from '../../engine/units.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { quantity } from '../../plan/schema/quantity.ts';
import { sheetFormat } from '../sheet-format.ts';
import { MENU_WORDS } from '../words.ts';
import { expectedInstead } from './check-value.ts';
import { type Entry, type EntryContext, refused } from './entry.ts';
import { type AmountUnit, parseAmount } from './parse-amount.ts';

type WeatherKind = 'eto' | 'rain';

const DEPTH_UNITS: Partial<Record<AmountUnit, UnitSystem>> = { inch: 'us', millimetre: 'metric' };
const UNIT_WORDS: Readonly<Record<UnitSystem, string>> = { us: 'inches', metric: 'millimetres' };
const KIND_WORDS: Readonly<Record<WeatherKind, string>> = { rain: 'rain', eto: 'reference ET' };

/** The days of a week with a figure of their own. */
interface OwnDays {
  readonly days: readonly DayNumber[];
  readonly sumMm: number;
}

/**
 * Two and a half times what hot, dry regions have on their days of most, 8 mm (FAO-56 Table 2, from memory; the factor is a
 * choice of this kit): more is a slip of the finger.
 */
const MOST_ETO_MM_PER_WEEK = 7 * 20;
/** Less than any gauge can tell. */
const SAME_MM = 0.05;

export function weatherEntry(kind: WeatherKind, week: number, text: string, context: EntryContext): Entry {
  const { plan, season, locale } = context;
  const what = KIND_WORDS[kind];
  const hint = `The ${what} of the whole week goes here, in ${UNIT_WORDS[plan.units]}.`;
  const amount = parseAmount(text, locale);
  if (amount.kind === 'unread') return refused(`${amount.why}. ${hint}`);
  const firstDay = season.garden.span.firstDay + 7 * week;
  const before = weekEntered(plan.log?.weeks, firstDay)?.[kind];
  const own = ownDays(kind, firstDay, context);
  if (amount.kind === 'empty') {
    if (before !== undefined) return change(kind, firstDay, undefined);
    return own.days.length === 0 ? { kind: 'same' } : takeOut(kind, own.days, context);
  }
  const system = amount.unit === undefined ? plan.units : DEPTH_UNITS[amount.unit];
  if (system === undefined) return refused(`“${text.trim()}” is no depth of water. ${hint}`);
  const depth = system === plan.units ? amount.value : converted(amount.value, system, plan.units);
  const expected = expectedInstead(quantity('depth', plan.units), depth);
  if (expected !== undefined) return refused(`“${text.trim()}” does not fit: write ${expected}.`);
  const why = whyNot(kind, toSi(depth, 'depth', plan.units), own, context);
  if (why !== undefined) return refused(why);
  return depth === before ? { kind: 'same' } : change(kind, firstDay, depth);
}

/** Why a total cannot be: days win over it, so what they come to is the least, and all of it where each has its own. */
function whyNot(kind: WeatherKind, mm: number, { days, sumMm }: OwnDays, context: EntryContext): string | undefined {
  const what = KIND_WORDS[kind];
  if (kind === 'eto' && mm > MOST_ETO_MM_PER_WEEK) {
    return `So much water no grass uses in a week: write at most ${inWords(MOST_ETO_MM_PER_WEEK, context)}.`;
  }
  const first = `Or choose “${MENU_WORDS.giveBack}” first: that takes out what was entered by day.`;
  if (days.length === 7 && Math.abs(mm - sumMm) > SAME_MM) {
    return `Every day of this week has its own ${what}, ${inWords(sumMm, context)} in all, which counts. ${first}`;
  }
  if (mm > sumMm - SAME_MM) return undefined;
  const count = days.length === 1 ? '1 day of this week has' : `${days.length} days of this week have`;
  return `${count} ${what} of ${inWords(sumMm, context)} already, which counts: write at least that. ${first}`;
}

function change(kind: WeatherKind, firstDay: DayNumber, depth: number | undefined): Entry {
  const week = isoDate(firstDay);
  const edit: Edit =
    kind === 'rain' ? { type: 'set-week-rain', week, rain: depth } : { type: 'set-week-eto', week, eto: depth };
  return { kind: 'edit', edit };
}

/** The figure of each day goes, its other observations stay. */
function takeOut(kind: WeatherKind, days: readonly DayNumber[], { plan }: EntryContext): Entry {
  const edits = days.map((day): Edit => {
    const { [kind]: _, ...weather } = plan.log?.days?.[isoDate(day)] ?? {};
    return { type: 'set-day-weather', day: isoDate(day), weather };
  });
  const count = days.length === 1 ? '1 day' : `${days.length} days`;
  return { kind: 'edit', edit: { type: 'together', label: `Take out ${KIND_WORDS[kind]} of ${count}`, edits } };
}

function converted(value: number, from: UnitSystem, to: UnitSystem): number {
  return Number(fromSi(toSi(value, 'depth', from), 'depth', to).toPrecision(6));
}

function inWords(mm: number, { plan, locale }: EntryContext): string {
  return sheetFormat(plan.units, locale).depthWords(mm);
}

/** A week's total may be kept under any day of the week. */
function weekEntered<T>(weeks: Readonly<Record<string, T>> | undefined, firstDay: DayNumber): T | undefined {
  return Object.entries(weeks ?? {}).find(([day]) => isInWeek(dayNumber(day), firstDay))?.[1];
}

function ownDays(kind: WeatherKind, firstDay: DayNumber, { season }: EntryContext): OwnDays {
  const field = kind === 'rain' ? 'rainMm' : 'etoMm';
  const observed = season.garden.observed.days;
  const days = [0, 1, 2, 3, 4, 5, 6]
    .map((offset) => firstDay + offset)
    .filter((day) => observed.get(day)?.[field] !== undefined);
  return { days, sumMm: days.reduce((sum, day) => sum + (observed.get(day)?.[field] ?? 0), 0) };
}

const isInWeek = (day: DayNumber, firstDay: DayNumber): boolean => day >= firstDay && day < firstDay + 7;
