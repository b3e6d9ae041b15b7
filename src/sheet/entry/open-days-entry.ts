/** Watering days on which a planting's shut-off is open, set by hand. */
import { isoDate } from '../../engine/calendar.ts';
import { plantingFigure } from '../../engine/season/planting-week.ts';
import { parseAmount } from '../../language/format/parse-amount.ts';
import type { PlantingRow } from '../sheet-row.ts';
import { wateringDayCount } from '../watering-days.ts';
import { type Entry, type EntryContext, refused } from './entry.ts';

export function openDaysEntry(
  { zone, planting }: PlantingRow,
  week: number,
  text: string,
  context: EntryContext,
): Entry {
  const { id } = planting.planting;
  const most = wateringDayCount(zone.zone);
  const hint = `Write on how many of the ${most} watering days the shut-off is open, such as ${most} of ${most}.`;
  const amount = parseAmount(text, context.format.reader.language);
  if (amount.kind === 'unread') return refused(`${amount.why} ${hint}`);
  const before = zone.zone.choices.get(week)?.openDays?.get(id);
  const days = amount.kind === 'empty' ? undefined : amount.value;
  if (amount.kind === 'amount') {
    const unit = amount.unit ?? (context.measure === 'all' ? 'day' : 'unknown');
    if (unit !== 'day') return refused(`A planting’s figures follow from its zone; its shut-off can be set. ${hint}`);
    if (!Number.isInteger(amount.value) || amount.value < 0 || amount.value > most) {
      return refused(`“${text.trim()}” does not fit: write a whole number from 0 to ${most} days.`);
    }
  }
  if (days !== undefined && plantingFigure(planting, 'groundDays', week) === 0) {
    return refused(`${planting.planting.name} is not in the ground in this week, so its shut-off waters bare soil.`);
  }
  if (days === before) return { kind: 'same' };
  const where = { zone: zone.zone.id, week: isoDate(context.season.garden.span.firstDay + 7 * week) };
  return { kind: 'edit', edit: { type: 'set-open-days', ...where, planting: id, days } };
}
