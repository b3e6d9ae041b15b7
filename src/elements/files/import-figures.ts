/** Figures of a table that is being imported, as they are shown: what stands in the plan, and what would. */
import { dayNumber } from '../../engine/calendar.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';
import { type Quantity, unitOf } from '../../engine/units.ts';
import type { ImportChange, ImportReading } from '../../exchange/csv/imported.ts';
import { filesWords } from '../../language/en/files.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import { formatNumber } from '../../language/format/number.ts';
import { symbolOf, withUnit } from '../../language/format/quantity.ts';
import { type ReadyView, readingOf } from '../shared/plan-state.ts';

/** Digits that an entry may have; what is kept is kept whole. */
const DECIMALS = 3;

const QUANTITIES: Readonly<Record<ImportReading, Quantity | undefined>> = {
  minutes: undefined,
  minutesRun: undefined,
  closed: undefined,
  note: undefined,
  weekRain: 'depth',
  weekEto: 'depth',
  rain: 'depth',
  minTemperature: 'temperature',
  maxTemperature: 'temperature',
};

/** The words, and what writes figures, of a view's reader. */
export function saying(view: ReadyView) {
  const reader = readingOf(view);
  return { reader, say: filesWords(reader.language), format: formatFor(reader) };
}

/** Beside them stands what runs now. */
const OF_RUNS: ReadonlySet<ImportReading> = new Set(['minutes', 'minutesRun', 'closed']);

export function figureNow(change: ImportChange, view: ReadyView): string {
  const { say } = saying(view);
  const { from, reading } = change;
  if (reading === 'note') return from === undefined ? '' : figure(from, reading, view);
  if (!OF_RUNS.has(reading)) return from === undefined ? say.notObserved : figure(from, reading, view);
  if (from !== undefined) return say.byHand(figure(from, reading, view));
  const zone = view.season.zones.find((each) => each.zone.name === change.zone);
  const week = (dayNumber(change.day) - view.season.garden.span.firstDay) / 7;
  const minutes = zone === undefined ? Number.NaN : zoneFigure(zone, 'minutes', week);
  return say.computed(figure(Number(minutes.toFixed(1)), 'minutes', view));
}

export function figure(value: number | string, reading: ImportReading, view: ReadyView): string {
  const { reader, say } = saying(view);
  if (typeof value === 'string') return isolated(value);
  if (reading === 'closed') return say.closedThen;
  const quantity = QUANTITIES[reading];
  const unit = quantity === undefined ? 'min' : unitOf(quantity, reader.units).name;
  return withUnit(formatNumber(value, reader.locale, DECIMALS), symbolOf(unit, reader.language));
}
