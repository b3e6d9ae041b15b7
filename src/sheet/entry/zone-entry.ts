/** Minutes of a week, typed as such or as the gallons they should bring. */
import { isoDate } from '../../engine/calendar.ts';
import { plantingFigure } from '../../engine/season/planting-week.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure, zoneOrigin, zoneState } from '../../engine/season/zone-week.ts';
import { toSi } from '../../engine/units.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { weekMinutes } from '../../plan/schema/records.ts';
import { sheetFormat } from '../sheet-format.ts';
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
  const run = toRun(amount.value, amount.unit ?? shownUnit(context), { zone, week });
  if (typeof run === 'string') return refused(run);
  const { minutes } = run;
  const expected = expectedInstead(weekMinutes, minutes);
  if (expected !== undefined) return refused(`“${text.trim()}” does not fit: write ${expected}.`);
  const choice = zone.zone.choices.get(week);
  const before = origin === 'run' ? choice?.minutesRun : choice?.minutes;
  if (before === minutes) return { kind: 'same' };
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
  if (measure !== 'volume') return 'minute';
  return plan.units === 'us' ? 'gallon' : 'litre';
}

interface Run {
  readonly minutes: number;
  /** Where a volume was typed. */
  readonly wantedLitres?: number;
  readonly litres?: number;
}

/** Minutes of the week, or why the figure is none. */
function toRun(
  value: number,
  unit: AmountUnit,
  at: { readonly zone: ZoneSeason; readonly week: number },
): Run | string {
  if (unit === 'minute') return { minutes: value };
  if (unit !== 'gallon' && unit !== 'litre') return `A zone’s week takes minutes or a volume. ${HINT}`;
  const litres = unit === 'gallon' ? toSi(value, 'volume', 'us') : value;
  const litresPerMinute = weekFlowLpm(at.zone, at.week);
  if (litresPerMinute === 0) {
    return `No line of ${at.zone.zone.name} gives water in this week, so a volume cannot be turned into minutes.`;
  }
  // What a timer can be set to: whole steps on each watering day.
  const step = at.zone.zone.timerStepMinutes * wateringDayCount(at.zone.zone);
  const steps = Math.round(litres / litresPerMinute / step);
  const minutes = litres > 0 ? Math.max(1, steps) * step : steps * step;
  return { minutes, wantedLitres: litres, litres: minutes * litresPerMinute };
}

/** What a timer's steps made of a volume, where that is another one to the eye. */
function roundingRemark({ zone }: ZoneSeason, run: Run, { plan, locale }: EntryContext): string | undefined {
  const { minutes, wantedLitres = 0, litres = 0 } = run;
  const format = sheetFormat(plan.units, locale);
  const [wanted, given] = [format.volumeWords(wantedLitres), format.volumeWords(litres)];
  if (wanted === given) return undefined;
  const days = wateringDayCount(zone);
  const step = format.minutesWords(zone.timerStepMinutes);
  return `${wanted} became ${given}, ${format.minutesWords(minutes)}: the timer runs in steps of ${step} on each of ${format.days(days)}.`;
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
