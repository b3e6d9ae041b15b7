/** Watering days on which a planting's shut-off is open, set by hand. */
import { isoDate } from '../../engine/calendar.ts';
import { plantingFigure } from '../../engine/season/planting-week.ts';
import { entryWords } from '../../language/en/entry.ts';
import { type Amount, parseAmount } from '../../language/format/parse-amount.ts';
import type { PlantingRow } from '../sheet-row.ts';
import { wateringDayCount } from '../watering-days.ts';
import { type Entry, type EntryContext, type Refused, refused } from './entry.ts';

export function openDaysEntry(
  { zone, planting }: PlantingRow,
  week: number,
  text: string,
  context: EntryContext,
): Entry {
  const { id, name } = planting.planting;
  const { language } = context.format.reader;
  const amount = parseAmount(text, language);
  const wrong = whyNot(amount, text.trim(), wateringDayCount(zone.zone, week), context);
  if (wrong !== undefined) return wrong;
  const days = amount.kind === 'amount' ? amount.value : undefined;
  if (days !== undefined && plantingFigure(planting, 'groundDays', week) === 0) {
    return refused('not-in-ground', entryWords(language).refused['not-in-ground'](name));
  }
  if (days === zone.zone.choices.get(week)?.openDays?.get(id)) return { kind: 'same' };
  const where = { zone: zone.zone.id, week: isoDate(context.season.garden.span.firstDay + 7 * week) };
  return { kind: 'edit', edit: { type: 'set-open-days', ...where, planting: id, days } };
}

/** Why an amount is no number of watering days from 0 to `most`. */
function whyNot(amount: Amount, typed: string, most: number, { format, measure }: EntryContext): Refused | undefined {
  const { refused: say, hints, sentences } = entryWords(format.reader.language);
  const hint = hints.openDays(format, most);
  if (amount.kind === 'unread') return refused(amount.code, sentences([amount.why, hint]));
  if (amount.kind === 'empty') return undefined;
  const { value, unit } = amount;
  // Where one figure is shown it is the planting's water: a bare number would be that.
  const isDays = unit === 'day' || (unit === undefined && measure === 'all');
  if (!isDays) return refused('planting-unit', sentences([say['planting-unit'], hint]));
  if (Number.isInteger(value) && value >= 0 && value <= most) return undefined;
  return refused('whole-days', say['whole-days'](format, typed, most));
}
