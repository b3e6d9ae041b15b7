/** What the water meter shows, beside what was expected since the reading before. */
import { html, nothing, type TemplateResult } from 'lit';
import { type DayNumber, dayNumber, isoDate } from '../../engine/calendar.ts';
import type { Season } from '../../engine/season/season.ts';
import { seasonSupply } from '../../engine/supply/season-supply.ts';
import { toSi } from '../../engine/units.ts';
import { weekCloseWords } from '../../language/en/week-close.ts';
import { formatFor } from '../../language/format/format.ts';
import { parseQuantity } from '../../language/format/parse-quantity.ts';
import { readingOf } from '../shared/plan-state.ts';
import { entryField, type Read, type WeekEntries } from './week-entries.ts';
import type { WeekContext } from './week-model.ts';

const MOST_DECIMALS = 6;
/** A meter and a plan that differ by less agree: emitters themselves differ by as much. Common practice, no source. */
const AGREES = 0.1;

export function meterEntry(context: WeekContext, entries: WeekEntries): TemplateResult {
  const { view, firstDay, today } = context;
  const { plan } = view;
  const reader = readingOf(view);
  const say = weekCloseWords(reader.language);
  const format = formatFor(reader);
  const day = Math.min(today, firstDay + 6);
  const readings = plan.log?.meter ?? {};
  const known = readings[isoDate(day)];
  const key = `meter-${isoDate(day)}`;
  const read = (text: string): Read => {
    const edit = (reading: number | undefined) =>
      ({ kind: 'edit', edit: { type: 'set-meter', day: isoDate(day), reading } }) as const;
    if (text.trim() === '') return known === undefined ? { kind: 'same' } : edit(undefined);
    const parsed = parseQuantity(text, 'volume', reader);
    if (parsed.kind !== 'number') return { kind: 'refused', why: parsed.why };
    return parsed.value === known ? { kind: 'same' } : edit(parsed.value);
  };
  const label = say.meterReading(format, day);
  return html`<section class="meter">
    <h3>${say.meter}</h3>
    <p class="reading"><span>${label}</span>
      ${entryField({ key, label, text: known === undefined ? '' : format.number(known, MOST_DECIMALS), unit: format.unit('volume'), read }, entries, reader)}</p>
    <p class="small" role="status">${compared(context, day) ?? nothing}</p>
  </section>`;
}

function compared({ view }: WeekContext, day: DayNumber): string | undefined {
  const { plan, season } = view;
  const reader = readingOf(view);
  const say = weekCloseWords(reader.language);
  const format = formatFor(reader);
  const readings = plan.log?.meter ?? {};
  const known = readings[isoDate(day)];
  const earlier = Object.keys(readings)
    .filter((each) => each < isoDate(day))
    .sort()
    .at(-1);
  if (known === undefined || earlier === undefined) return earlier === undefined ? say.meterFirst : undefined;
  const used = toSi(known - (readings[earlier] as number), 'volume', plan.units);
  if (used < 0) return say.meterMeans.back;
  const since = dayNumber(earlier);
  const expected = meteredLitres(season, since, day);
  const sentence = say.meterSince(format, used, since, expected);
  const share = expected > 0 ? used / expected - 1 : 0;
  const means = () => {
    if (Math.abs(share) <= AGREES) return say.meterMeans.same;
    return share > 0 ? say.meterMeans.more(format, share) : say.meterMeans.less(format, -share);
  };
  return expected > 0 ? `${sentence} ${means()}` : sentence;
}

/** Litres from the source after one day, through another; what a tank gives does not pass the meter. */
function meteredLitres(season: Season, since: DayNumber, through: DayNumber): number {
  const { tank, drawL } = seasonSupply(season);
  const { firstDay } = season.garden.span;
  const from = Math.max(0, since + 1 - firstDay);
  return (tank?.besidesL ?? drawL)
    .subarray(from, Math.max(from, through + 1 - firstDay))
    .reduce((sum, litres) => sum + litres, 0);
}
