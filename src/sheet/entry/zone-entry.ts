/** Minutes of a week, typed as such or as the gallons they should bring. */
import { isoDate } from '../../engine/calendar.ts';
import { plantingFigure } from '../../engine/season/planting-week.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure, zoneOrigin, zoneState } from '../../engine/season/zone-week.ts';
import { toSi } from '../../engine/units.ts';
import { weekMinutes } from '../../plan/schema/records.ts';
import type { ZoneRow } from '../sheet-row.ts';
import { wateringDayCount } from '../watering-days.ts';
import { expectedInstead } from './check-value.ts';
import { type Entry, type EntryContext, refused } from './entry.ts';
import { type AmountUnit, parseAmount } from './parse-amount.ts';

const HINT = 'The minutes of this week go here, such as 45, 1 h 20 or 150 gal.';

export function zoneEntry({ zone }: ZoneRow, week: number, text: string, context: EntryContext): Entry {
  const amount = parseAmount(text, context.locale);
  if (amount.kind === 'unread') return refused(`${amount.why}. ${HINT}`);
  if (amount.kind === 'empty') return giveBack(zone, week, context);
  const { name } = zone.zone;
  if (zoneState(zone, week) === 'off') {
    return refused(`Nothing in ${name} is in the ground in this week, so its minutes would water bare soil.`);
  }
  const origin = zoneOrigin(zone, week);
  if (origin === 'closed')
    return refused(`${name} is closed for this week: open the week first, then set its minutes.`);
  const minutes = toMinutes(amount.value, amount.unit ?? shownUnit(context), { zone, week });
  if (typeof minutes === 'string') return refused(minutes);
  const expected = expectedInstead(weekMinutes, minutes);
  if (expected !== undefined) return refused(`“${text.trim()}” does not fit: write ${expected}.`);
  const choice = zone.zone.choices.get(week);
  const before = origin === 'run' ? choice?.minutesRun : choice?.minutes;
  if (before === minutes) return { kind: 'same' };
  const type = origin === 'run' ? 'set-minutes-run' : 'set-minutes';
  return { kind: 'edit', edit: { type, zone: zone.zone.id, week: weekOf(context, week), minutes } };
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
  if (measure !== 'volume') return 'minute';
  return plan.units === 'us' ? 'gallon' : 'litre';
}

/** Minutes of the week, or why the figure is none. */
function toMinutes(
  value: number,
  unit: AmountUnit,
  at: { readonly zone: ZoneSeason; readonly week: number },
): number | string {
  if (unit === 'minute') return value;
  if (unit !== 'gallon' && unit !== 'litre') return `A zone’s week takes minutes or a volume. ${HINT}`;
  const litres = unit === 'gallon' ? toSi(value, 'volume', 'us') : value;
  const litresPerMinute = weekFlowLpm(at.zone, at.week);
  if (litresPerMinute === 0) {
    return `No line of ${at.zone.zone.name} gives water in this week, so a volume cannot be turned into minutes.`;
  }
  // What a timer can be set to: whole steps on each watering day.
  const step = at.zone.zone.timerStepMinutes * wateringDayCount(at.zone.zone);
  const steps = Math.round(litres / litresPerMinute / step);
  return litres > 0 ? Math.max(1, steps) * step : steps * step;
}

/** Litres that a minute of this week brings, shut-offs as they stand; of its open lines where it does not run. */
function weekFlowLpm(zone: ZoneSeason, week: number): number {
  const minutes = zoneFigure(zone, 'minutes', week);
  const litres = zoneFigure(zone, 'litres', week);
  if (minutes > 0 && litres > 0) return litres / minutes;
  return zone.plantings.reduce((sum, planting) => sum + plantingFigure(planting, 'flowLpm', week), 0);
}

function weekOf({ season }: EntryContext, week: number): string {
  return isoDate(season.garden.span.firstDay + 7 * week);
}
