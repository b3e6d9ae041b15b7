/** Minutes of a week, typed as such or as the gallons they should bring. */
import { isoDate } from '../../engine/calendar.ts';
import { litresByChoice } from '../../engine/season/litres-by-choice.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { zoneOrigin, zoneState } from '../../engine/season/zone-week.ts';
import { toSi } from '../../engine/units.ts';
import { type SettableRun, settableRun } from '../../explain/settable-minutes.ts';
import { entryWords } from '../../language/en/entry.ts';
import { type AmountUnit, parseAmount } from '../../language/format/parse-amount.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { MINUTES_A_WEEK } from '../../plan/schema/records.ts';
import type { ZoneRow } from '../sheet-row.ts';
import { TYPED_AS } from '../sheet-view.ts';
import { wateringDayCount } from '../watering-days.ts';
import { type Entry, type EntryContext, type RefusalCode, type Refused, refused } from './entry.ts';
import { runMinutesEdit, runMinutesFor } from './run-entry.ts';

/** The volume that a hint gives as an example, L: 150 gal, or 600 L. */
const EXAMPLE_LITRES = { us: toSi(150, 'volume', 'us'), metric: 600 } as const;

export function zoneEntry({ zone }: ZoneRow, week: number, text: string, context: EntryContext): Entry {
  const { format } = context;
  const amount = parseAmount(text, format.reader.language);
  if (amount.kind === 'unread') return refusedWithHint(amount.code, amount.why, context);
  if (amount.kind === 'empty') return takeBack(zone, week, context);
  const { refused: say } = entryWords(format.reader.language);
  const { name } = zone.zone;
  if (zoneState(zone, week) === 'off') return refused('bare-soil', say['bare-soil'](name));
  const origin = zoneOrigin(zone, week);
  if (origin === 'closed') return refused('closed', say.closed(name));
  const isRun = origin === 'run';
  const run = toRun(amount.value, amount.unit ?? shownUnit(context), { zone, week, isRun }, context);
  if ('kind' in run) return run;
  const { minutes } = run;
  if (!(minutes >= 0 && minutes <= MINUTES_A_WEEK)) {
    return refused('range', say.range(format, text.trim(), 0, MINUTES_A_WEEK, format.minuteUnit));
  }
  const before = zone.zone.choices.get(week)?.[isRun ? 'minutesRun' : 'minutes'];
  if (before === minutes) return { kind: 'same' };
  if (isRun)
    return { kind: 'edit', edit: runMinutesEdit(minutes, { zone, week, firstDay: firstDayOf(context, week) }) };
  const settable = settableRun(zone, week, minutes);
  const edit: Edit = {
    type: 'set-minutes',
    zone: zone.zone.id,
    week: weekOf(context, week),
    minutes: settable.minutes,
  };
  const remark = roundingRemark(zone, run, settable, context);
  return settable.minutes === before ? { kind: 'same', remark } : { kind: 'edit', edit, remark };
}

/** Refused, and what can be typed instead. */
function refusedWithHint(code: RefusalCode, why: string, { format }: EntryContext): Refused {
  const { hints, sentences } = entryWords(format.reader.language);
  return refused(code, sentences([why, hints.minutes(format, EXAMPLE_LITRES[format.reader.units])]));
}

/** Takes back what was decided last: the minutes run, a closed week, then the minutes set by hand. */
function takeBack(zone: ZoneSeason, week: number, context: EntryContext): Entry {
  const choice = zone.zone.choices.get(week);
  const where = { zone: zone.zone.id, week: weekOf(context, week) };
  if (choice?.minutesRun !== undefined) {
    return { kind: 'edit', edit: { type: 'set-minutes-run', ...where, minutes: undefined } };
  }
  if (choice?.closed) return { kind: 'edit', edit: { type: 'close-week', ...where, closed: false } };
  if (choice?.minutes !== undefined) {
    return { kind: 'edit', edit: { type: 'set-minutes', ...where, minutes: undefined } };
  }
  return { kind: 'same' };
}

function shownUnit({ measure, plan }: EntryContext): AmountUnit {
  if (TYPED_AS[measure] !== 'volume') return 'min';
  return plan.units === 'us' ? 'gal' : 'L';
}

interface Run {
  readonly minutes: number;
  /** Where one was typed: what was wanted, and what the minutes give. */
  readonly volume?: { readonly wantedLitres: number; readonly litres: number };
}

interface ZoneWeek {
  readonly zone: ZoneSeason;
  readonly week: number;
  /** Whether what is typed is what really ran. */
  readonly isRun: boolean;
}

function toRun(value: number, unit: AmountUnit, at: ZoneWeek, context: EntryContext): Run | Refused {
  if (unit === 'min') return { minutes: value };
  if (unit !== 'gal' && unit !== 'L') {
    const { refused: say } = entryWords(context.format.reader.language);
    return refusedWithHint('zone-unit', say['zone-unit'], context);
  }
  const wantedLitres = unit === 'gal' ? toSi(value, 'volume', 'us') : value;
  if (!(wantedLitres > 0)) return { minutes: value };
  if (!at.isRun) return minutesFor(wantedLitres, at, context);
  const minutes = runMinutesFor(wantedLitres, { ...at, firstDay: firstDayOf(context, at.week) });
  return minutes === undefined ? noFlow(at.zone, context) : { minutes };
}

function noFlow({ zone }: ZoneSeason, { format }: EntryContext): Refused {
  return refused('no-flow', entryWords(format.reader.language).refused['no-flow'](zone.name));
}

/** The fewest whole steps of the timer on each watering day that come nearest to a volume. */
function minutesFor(wantedLitres: number, { zone, week }: ZoneWeek, context: EntryContext): Run | Refused {
  const { format, season } = context;
  const { refused: say } = entryWords(format.reader.language);
  const { name, timerStepMinutes, choices } = zone.zone;
  const step = timerStepMinutes * wateringDayCount(zone.zone, week);
  const litresOf = litresByChoice(season, zone, week);
  const litresAt = (steps: number) => litresOf({ ...choices.get(week), minutes: steps * step });
  const most = Math.floor(MINUTES_A_WEEK / step);
  const mostLitres = litresAt(most);
  if (mostLitres === 0) return noFlow(zone, context);
  if (mostLitres < wantedLitres) return refused('too-much', say['too-much'](format, name, mostLitres));
  let [few, enough] = [1, most];
  while (few < enough) {
    const middle = Math.floor((few + enough) / 2);
    if (litresAt(middle) < wantedLitres) few = middle + 1;
    else enough = middle;
  }
  const [below, above] = [litresAt(enough - 1), litresAt(enough)];
  const isBelow = enough > 1 && wantedLitres - below < above - wantedLitres;
  const steps = isBelow ? enough - 1 : enough;
  const { minutes } = settableRun(zone, week, steps * step);
  return { minutes, volume: { wantedLitres, litres: litresAt(minutes / step) } };
}

/** What a timer's steps made of minutes, or of a volume where that is another one to the eye. */
function roundingRemark(
  { zone }: ZoneSeason,
  { minutes: typed, volume }: Run,
  settable: SettableRun,
  { format }: EntryContext,
): string | undefined {
  const say = entryWords(format.reader.language);
  const rounded = { ...settable, stepMinutes: zone.timerStepMinutes };
  if (volume === undefined) return typed === settable.minutes ? undefined : say.settable(format, typed, rounded);
  const { wantedLitres, litres } = volume;
  if (format.amount(wantedLitres, 'volume') === format.amount(litres, 'volume')) return undefined;
  return say.rounded(format, wantedLitres, litres, rounded);
}

function firstDayOf({ season }: EntryContext, week: number): number {
  return season.garden.span.firstDay + 7 * week;
}

function weekOf(context: EntryContext, week: number): string {
  return isoDate(firstDayOf(context, week));
}
