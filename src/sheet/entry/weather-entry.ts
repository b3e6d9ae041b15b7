/** Rain or reference ET of a whole week, in the plan's unit. */
import { type DayNumber, isoDate } from '../../engine/calendar.ts';
import { ETO_METHODS } from '../../engine/climate/daily-eto.ts';
import { RAIN_ORIGINS } from '../../engine/rain/daily-rain.ts';
import { fromSi, toSi, type UnitSystem } from '../../engine/units.ts';
import type { Format } from '../../language/format/format.ts';
import { type AmountUnit, parseAmount } from '../../language/format/parse-amount.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { readWeek } from '../../plan/edits/week-records.ts';
import { quantity } from '../../plan/schema/quantity.ts';
import type { WeatherKind } from '../week-weather.ts';
import { MENU_WORDS } from '../words.ts';
import { expectedInstead } from './check-value.ts';
import { type Entry, type EntryContext, refused } from './entry.ts';

const DEPTH_UNITS: Partial<Record<AmountUnit, UnitSystem>> = { in: 'us', mm: 'metric' };
const UNIT_WORDS: Readonly<Record<UnitSystem, string>> = { us: 'inches', metric: 'millimetres' };
const KIND_WORDS: Readonly<Record<WeatherKind, string>> = { rain: 'rain', eto: 'reference ET' };

/** The days of a week whose own figures win over its total. */
interface OwnDays {
  /** Entered as such. */
  readonly entered: readonly DayNumber[];
  readonly count: number;
  readonly sumMm: number;
}

/**
 * Two and a half times what hot, dry regions have on their days of most, 8 mm (FAO-56 Table 2, from memory; the factor is a
 * choice of this kit): more is a slip of the finger.
 */
const MOST_ETO_MM_PER_WEEK = 7 * 20;
/** Half of the last digit that is written, 0.01 in. */
const SAME_MM = 0.127;

export function weatherEntry(kind: WeatherKind, week: number, text: string, context: EntryContext): Entry {
  const { plan, season, format } = context;
  const what = KIND_WORDS[kind];
  const hint = `The ${what} of the whole week goes here, in ${UNIT_WORDS[plan.units]}.`;
  const amount = parseAmount(text, format.reader.language);
  if (amount.kind === 'unread') return refused(`${amount.why} ${hint}`);
  const firstDay = season.garden.span.firstDay + 7 * week;
  const before = readWeek(plan.log?.weeks, plan.season, isoDate(firstDay))?.[kind];
  const own = ownDays(kind, week, context);
  if (amount.kind === 'empty') {
    if (before !== undefined) return change(kind, firstDay, undefined);
    return own.entered.length === 0 ? { kind: 'same' } : takeOut(kind, own.entered);
  }
  const system = amount.unit === undefined ? plan.units : DEPTH_UNITS[amount.unit];
  if (system === undefined) return refused(`“${text.trim()}” is no depth of water. ${hint}`);
  const depth = system === plan.units ? amount.value : converted(amount.value, system, plan.units);
  const expected = expectedInstead(quantity('depth', plan.units), depth);
  if (expected !== undefined) return refused(`“${text.trim()}” does not fit: write ${expected}.`);
  const why = whyNot({ kind, mm: toSi(depth, 'depth', plan.units), own, hasTotal: before !== undefined }, format);
  if (why !== undefined) return refused(why);
  return depth === before ? { kind: 'same' } : change(kind, firstDay, depth);
}

/** Why a total cannot be: days win over it, so what they come to is the least, and all of it where each has its own. */
function whyNot(
  { kind, mm, own, hasTotal }: { kind: WeatherKind; mm: number; own: OwnDays; hasTotal: boolean },
  format: Format,
): string | undefined {
  if (kind === 'eto' && mm > MOST_ETO_MM_PER_WEEK) {
    return `So much water no grass uses in a week: write at most ${format.spelled(MOST_ETO_MM_PER_WEEK, 'depth')}.`;
  }
  const { entered, count, sumMm } = own;
  const isWhole = count === 7;
  if (isWhole ? Math.abs(mm - sumMm) <= SAME_MM : mm >= sumMm - SAME_MM) return undefined;
  const what = KIND_WORDS[kind];
  const some =
    count === 1 ? `1 day of this week has ${what} of its own` : `${count} days of this week have ${what} of their own`;
  const said = `${isWhole ? `Every day of this week has its own ${what}` : some}, ${format.spelled(sumMm, 'depth')} in all.`;
  const least = isWhole ? '' : ' Write at least that.';
  if (entered.length < count)
    return `${said}${least} It follows from the temperatures of the log: take in a file with others.`;
  const twice = hasTotal ? ' twice, for its total and for its days' : '';
  return `${said}${least} To be rid of it, choose “${MENU_WORDS.giveBack}”${twice}.`;
}

function change(kind: WeatherKind, firstDay: DayNumber, depth: number | undefined): Entry {
  const week = isoDate(firstDay);
  const edit: Edit =
    kind === 'rain' ? { type: 'set-week-rain', week, rain: depth } : { type: 'set-week-eto', week, eto: depth };
  return { kind: 'edit', edit };
}

/** The figure of each day goes, its other observations stay. */
function takeOut(kind: WeatherKind, days: readonly DayNumber[]): Entry {
  const edits = days.map(
    (day): Edit => ({ type: 'change-day-weather', day: isoDate(day), change: { [kind]: undefined } }),
  );
  const action = kind === 'rain' ? 'remove-day-rain' : 'remove-day-eto';
  return { kind: 'edit', edit: { type: 'together', action, edits } };
}

function converted(value: number, from: UnitSystem, to: UnitSystem): number {
  return Number(fromSi(toSi(value, 'depth', from), 'depth', to).toPrecision(6));
}

function ownDays(kind: WeatherKind, week: number, { plan, season }: EntryContext): OwnDays {
  const { firstDay, eto, rain } = season.weather;
  const { mm } = kind === 'eto' ? eto : rain;
  const originOf = (place: number) =>
    kind === 'eto' ? ETO_METHODS[eto.method[place] as number] : RAIN_ORIGINS[rain.origin[place] as number];
  const places = [0, 1, 2, 3, 4, 5, 6]
    .map((offset) => 7 * week + offset)
    .filter((place) => !SHARED.has(originOf(place)));
  return {
    entered: places
      .map((place) => firstDay + place)
      .filter((day) => plan.log?.days?.[isoDate(day)]?.[kind] !== undefined),
    count: places.length,
    sumMm: places.reduce((sum, place) => sum + (mm[place] as number), 0),
  };
}

/** Where a day has its figure from that a week's total replaces. */
const SHARED: ReadonlySet<string | undefined> = new Set(['normals', 'observed-week']);
