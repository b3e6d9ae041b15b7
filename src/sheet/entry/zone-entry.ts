/** Minutes of a week, typed as such or as the gallons they should bring. */
import { isoDate } from '../../engine/calendar.ts';
import { litresByChoice } from '../../engine/season/litres-by-choice.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { zoneOrigin, zoneState } from '../../engine/season/zone-week.ts';
import { toSi } from '../../engine/units.ts';
import { type AmountUnit, parseAmount } from '../../language/format/parse-amount.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { MINUTES_A_WEEK, weekMinutes } from '../../plan/schema/records.ts';
import type { ZoneRow } from '../sheet-row.ts';
import { wateringDayCount } from '../watering-days.ts';
import { expectedInstead } from './check-value.ts';
import { type Entry, type EntryContext, refused } from './entry.ts';

const HINT = 'The minutes of this week go here, such as 45, 1 h 20 or 150 gal.';

export function zoneEntry({ zone }: ZoneRow, week: number, text: string, context: EntryContext): Entry {
  const amount = parseAmount(text, context.format.reader.language);
  if (amount.kind === 'unread') return refused(`${amount.why} ${HINT}`);
  if (amount.kind === 'empty') return giveBack(zone, week, context);
  const { name } = zone.zone;
  if (zoneState(zone, week) === 'off') {
    return refused(`Nothing in ${name} is in the ground in this week, so its minutes would water bare soil.`);
  }
  const origin = zoneOrigin(zone, week);
  if (origin === 'closed')
    return refused(`${name} is closed for this week: open the week first, then set its minutes.`);
  const field = origin === 'run' ? 'minutesRun' : 'minutes';
  const run = toRun(amount.value, amount.unit ?? shownUnit(context), { zone, week, field }, context);
  if (typeof run === 'string') return refused(run);
  const { minutes } = run;
  const expected = expectedInstead(weekMinutes, minutes);
  if (expected !== undefined) return refused(`“${text.trim()}” does not fit: write ${expected}.`);
  if (zone.zone.choices.get(week)?.[field] === minutes) return { kind: 'same' };
  const type = origin === 'run' ? 'set-minutes-run' : 'set-minutes';
  const edit: Edit = { type, zone: zone.zone.id, week: weekOf(context, week), minutes };
  return { kind: 'edit', edit, remark: roundingRemark(zone, run, context) };
}

/** Takes back what was decided last: the minutes run, a closed week, then the minutes set by hand. */
function giveBack(zone: ZoneSeason, week: number, context: EntryContext): Entry {
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
  if (measure !== 'volume') return 'min';
  return plan.units === 'us' ? 'gal' : 'L';
}

interface Run {
  readonly minutes: number;
  /** Where one was typed: what was wanted, and what the minutes give. */
  readonly volume?: { readonly wantedLitres: number; readonly litres: number };
}

interface ZoneWeekPlace {
  readonly zone: ZoneSeason;
  readonly week: number;
  /** Which minutes are typed. */
  readonly field: 'minutes' | 'minutesRun';
}

/** Minutes of the week, or why the figure is none. */
function toRun(value: number, unit: AmountUnit, at: ZoneWeekPlace, context: EntryContext): Run | string {
  if (unit === 'min') return { minutes: value };
  if (unit !== 'gal' && unit !== 'L') return `A zone’s week takes minutes or a volume. ${HINT}`;
  const wantedLitres = unit === 'gal' ? toSi(value, 'volume', 'us') : value;
  if (!(wantedLitres > 0)) return { minutes: value };
  return minutesFor(wantedLitres, at, context);
}

/** The fewest whole steps of the timer on each watering day that come nearest to a volume. */
function minutesFor(wantedLitres: number, { zone, week, field }: ZoneWeekPlace, context: EntryContext): Run | string {
  const { name, timerStepMinutes, choices } = zone.zone;
  const step = timerStepMinutes * wateringDayCount(zone.zone);
  const litresOf = litresByChoice(context.season, zone, week);
  const litresAt = (steps: number) => litresOf({ ...choices.get(week), [field]: steps * step });
  const most = Math.floor(MINUTES_A_WEEK / step);
  const mostLitres = litresAt(most);
  if (mostLitres === 0)
    return `No line of ${name} gives water in this week, so a volume cannot be turned into minutes.`;
  if (mostLitres < wantedLitres) {
    return `${name} gives ${context.format.spelled(mostLitres, 'volume')} at most, running all week: write less.`;
  }
  let [few, enough] = [1, most];
  while (few < enough) {
    const middle = Math.floor((few + enough) / 2);
    if (litresAt(middle) < wantedLitres) few = middle + 1;
    else enough = middle;
  }
  const [below, above] = [litresAt(enough - 1), litresAt(enough)];
  const isBelow = enough > 1 && wantedLitres - below < above - wantedLitres;
  const [steps, litres] = isBelow ? [enough - 1, below] : [enough, above];
  return { minutes: steps * step, volume: { wantedLitres, litres } };
}

/** What a timer's steps made of a volume, where that is another one to the eye. */
function roundingRemark({ zone }: ZoneSeason, { minutes, volume }: Run, { format }: EntryContext): string | undefined {
  if (volume === undefined) return undefined;
  const [wanted, given] = [format.spelled(volume.wantedLitres, 'volume'), format.spelled(volume.litres, 'volume')];
  if (wanted === given) return undefined;
  const days = wateringDayCount(zone);
  const step = format.spelledMinutes(zone.timerStepMinutes);
  return `${wanted} became ${given}, ${format.spelledMinutes(minutes)}: the timer runs in steps of ${step} on each of ${format.count(days, { one: 'day', other: 'days' })}.`;
}

function weekOf({ season }: EntryContext, week: number): string {
  return isoDate(season.garden.span.firstDay + 7 * week);
}
