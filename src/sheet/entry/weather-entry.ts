/** Rain or reference ET of a whole week, in the plan's unit. */
import { type DayNumber, isoDate } from '../../engine/calendar.ts';
import { ETO_METHODS } from '../../engine/climate/daily-eto.ts';
import { RAIN_ORIGINS } from '../../engine/rain/daily-rain.ts';
import { fromSi, toSi, type UnitSystem } from '../../engine/units.ts';
import { type EntryWords, entryWords } from '../../language/en/entry.ts';
import { unitsWords } from '../../language/en/units.ts';
import { type AmountUnit, parseAmount } from '../../language/format/parse-amount.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { filledDays } from '../../plan/edits/filled-days.ts';
import { readWeek } from '../../plan/edits/week-records.ts';
import { boundsOf } from '../../plan/schema/quantity.ts';
import type { WeatherKind } from '../week-weather.ts';
import { type EditEntry, type Entry, type EntryContext, type RefusalCode, type Refused, refused } from './entry.ts';

const DEPTH_UNITS: Partial<Record<AmountUnit, UnitSystem>> = { in: 'us', mm: 'metric' };

/** The days of a week that have figures of their own. */
interface OwnDays {
  /** Entered as such. */
  readonly entered: readonly DayNumber[];
  /** Those that win over a total: somebody typed them, or temperatures that tell them. */
  readonly holding: readonly DayNumber[];
  /** Of those that win. */
  readonly sumMm: number;
}

/**
 * Two and a half times what hot, dry regions have on their days of most, 8 mm (FAO-56 Table 2, from memory; the factor is a
 * choice of this kit): more is a slip of the finger.
 */
export const MOST_ETO_MM_PER_DAY = 20;
const MOST_ETO_MM_PER_WEEK = 7 * MOST_ETO_MM_PER_DAY;
/** Half of the last digit that is written, 0.01 in. */
const SAME_MM = 0.127;

export type WeatherContext = Pick<EntryContext, 'plan' | 'season' | 'format' | 'today'>;

export function weatherEntry(kind: WeatherKind, week: number, text: string, context: WeatherContext): Entry {
  const { plan, season, format } = context;
  const { refused: say } = entryWords(format.reader.language);
  const amount = parseAmount(text, format.reader.language);
  if (amount.kind === 'unread') return refusedWithHint(kind, amount.code, amount.why, context);
  const firstDay = season.garden.span.firstDay + 7 * week;
  const known = readWeek(plan.log?.weeks, plan.season, isoDate(firstDay));
  const before = known?.[kind];
  const own = ownDays(kind, week, context);
  if (amount.kind === 'empty') {
    if (before !== undefined) return change(kind, firstDay, undefined);
    return own.entered.length === 0 ? { kind: 'same' } : takeOut(kind, own);
  }
  const depth = depthOf(amount, plan.units);
  if (depth === undefined) return refusedWithHint(kind, 'depth-unit', say['depth-unit'](text.trim()), context);
  const [least, most] = boundsOf('depth', plan.units);
  if (!(depth >= least && depth <= most)) {
    return refused('range', say.range(format, text.trim(), least, most, format.unit('depth')));
  }
  const total = { kind, mm: toSi(depth, 'depth', plan.units), own, hasTotal: before !== undefined };
  const why = whyNot(total, context);
  if (why !== undefined) return why;
  const entry = change(kind, firstDay, depth, known?.rainThrough ?? readThrough(firstDay, context));
  const remark = filledDaysRemark(kind, entry.edit, context);
  if (remark !== undefined) return { ...entry, remark };
  return depth === before ? { kind: 'same' } : entry;
}

/** In the plan's unit; undefined where the unit is none of depth. */
function depthOf({ value, unit }: { value: number; unit?: AmountUnit | undefined }, units: UnitSystem) {
  const system = unit === undefined ? units : DEPTH_UNITS[unit];
  return system === undefined || system === units ? system && value : converted(value, system, units);
}

/** What becomes of days that a service or a file filled in; undefined where none is in the way of the total. */
export function filledDaysRemark(kind: WeatherKind, edit: Edit, { plan, format }: WeatherContext): string | undefined {
  if (edit.type !== 'set-week-rain' && edit.type !== 'set-week-eto') return undefined;
  const through = edit.type === 'set-week-rain' ? edit.through : undefined;
  const days = filledDays(plan, { kind, week: edit.week, through });
  return days.length === 0 ? undefined : entryWords(format.reader.language).filledDays[kind](format, days.length);
}

/** Refused, and what can be typed instead. */
function refusedWithHint(kind: WeatherKind, code: RefusalCode, why: string, { format }: WeatherContext): Refused {
  const { language, units } = format.reader;
  const { hints, sentences } = entryWords(language);
  const unit = unitsWords(language).names[units === 'us' ? 'in' : 'mm'];
  return refused(code, sentences([why, hints[kind](unit)]));
}

interface WeekTotal {
  readonly kind: WeatherKind;
  readonly mm: number;
  readonly own: OwnDays;
  /** Whether there is one already. */
  readonly hasTotal: boolean;
}

/** Why a total cannot be: days win over it, so what they come to is the least, and all of it where each has its own. */
function whyNot({ kind, mm, own, hasTotal }: WeekTotal, { format }: WeatherContext): Refused | undefined {
  const words = entryWords(format.reader.language);
  if (kind === 'eto' && mm > MOST_ETO_MM_PER_WEEK) {
    return refused('too-much-eto', words.refused['too-much-eto'](format, MOST_ETO_MM_PER_WEEK));
  }
  const { holding, sumMm } = own;
  const isWhole = holding.length === 7;
  if (isWhole ? Math.abs(mm - sumMm) <= SAME_MM : mm >= sumMm - SAME_MM) return undefined;
  const say = words.ownDays;
  const which = format.list(holding.map((day) => format.day(day)));
  const days = isWhole ? say.all[kind](format, sumMm) : say.some[kind](format, which, holding.length, sumMm);
  const sentences = [days, ...(isWhole ? [] : [say.atLeast]), howToClear(own, hasTotal, words)];
  return refused('own-days', words.sentences(sentences));
}

/** What takes the days' own figures away. */
function howToClear({ entered, holding }: OwnDays, hasTotal: boolean, { ownDays: say, clear }: EntryWords): string {
  if (holding.some((day) => !entered.includes(day))) return say.fromTemperatures;
  return hasTotal ? say.clearTwice(clear.weather) : say.clear(clear.weather);
}

/** A total of rain that is corrected stays read through the day that was given. */
function change(kind: WeatherKind, firstDay: DayNumber, depth: number | undefined, through?: string): EditEntry {
  const week = isoDate(firstDay);
  const edit: Edit =
    kind === 'rain'
      ? { type: 'set-week-rain', week, rain: depth, ...(through !== undefined && { through }) }
      : { type: 'set-week-eto', week, eto: depth };
  return { kind: 'edit', edit };
}

/** A gauge that is read in the week has caught its rain through today; what is to come stays usual. */
export function readThrough(firstDay: DayNumber, { today }: Pick<WeatherContext, 'today'>): string | undefined {
  return today !== undefined && today >= firstDay && today < firstDay + 6 ? isoDate(today) : undefined;
}

/** The figure of each day that was typed goes, or of each that was filled in where none was; other observations stay. */
function takeOut(kind: WeatherKind, { entered, holding }: OwnDays): Entry {
  const typed = entered.filter((day) => holding.includes(day));
  const days = typed.length > 0 ? typed : entered;
  const edits = days.map(
    (day): Edit => ({ type: 'change-day-weather', day: isoDate(day), change: { [kind]: undefined } }),
  );
  const action = kind === 'rain' ? 'remove-day-rain' : 'remove-day-eto';
  return { kind: 'edit', edit: { type: 'together', action, edits } };
}

function converted(value: number, from: UnitSystem, to: UnitSystem): number {
  return Number(fromSi(toSi(value, 'depth', from), 'depth', to).toPrecision(6));
}

function ownDays(kind: WeatherKind, week: number, { plan, season }: WeatherContext): OwnDays {
  const { firstDay, eto, rain } = season.weather;
  const { mm } = kind === 'eto' ? eto : rain;
  const originOf = (at: number) =>
    kind === 'eto' ? ETO_METHODS[eto.method[at] as number] : RAIN_ORIGINS[rain.origin[at] as number];
  const filled = filledDays(plan, { kind, week: isoDate(firstDay + 7 * week) });
  const offsets = [0, 1, 2, 3, 4, 5, 6].map((day) => 7 * week + day).filter((at) => !SHARED.has(originOf(at)));
  const holding = offsets.filter((at) => !filled.includes(isoDate(firstDay + at)));
  return {
    entered: offsets.map((at) => firstDay + at).filter((day) => plan.log?.days?.[isoDate(day)]?.[kind] !== undefined),
    holding: holding.map((at) => firstDay + at),
    sumMm: holding.reduce((sum, at) => sum + (mm[at] as number), 0),
  };
}

/** Where a day has its figure from that a week's total replaces. */
const SHARED: ReadonlySet<string | undefined> = new Set(['normals', 'observed-week', 'forecast']);
