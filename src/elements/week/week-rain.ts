/** The week's rain from a gauge, and the day through which it was read. */
import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { type DayNumber, isoDate } from '../../engine/calendar.ts';
import { weekWords } from '../../language/en/week.ts';
import { formatFor } from '../../language/format/format.ts';
import { readWeek } from '../../plan/edits/week-records.ts';
import { weatherEntry } from '../../sheet/entry/weather-entry.ts';
import { type ReadyView, readingOf } from '../shared/plan-state.ts';
import { entryField, type Read, type WeekEntries } from './week-entries.ts';

export interface RainEntry {
  readonly view: ReadyView;
  readonly week: number;
  readonly firstDay: DayNumber;
  /** By the reader's calendar. */
  readonly today: DayNumber;
  readonly entries: WeekEntries;
}

/** Decimals that a typed number may have and still be shown as typed. */
const MOST_DECIMALS = 6;

/** Nothing in a week that has not begun. */
export function weekRain({ view, week, firstDay, today, entries }: RainEntry): TemplateResult | typeof nothing {
  const { plan, season } = view;
  const reader = readingOf(view);
  const format = formatFor(reader);
  const say = weekWords(reader.language).rainEntry;
  const key = `rain-${isoDate(firstDay)}`;
  const { rain, rainThrough } = readWeek(plan.log?.weeks, plan.season, isoDate(firstDay)) ?? {};
  if (firstDay > today && rain === undefined) return nothing;
  const last = isoDate(firstDay + 6);
  const usual = today >= firstDay && today < firstDay + 6 ? isoDate(today) : last;
  const through = rain === undefined ? (entries.chosen.get(key) ?? usual) : (rainThrough ?? last);
  const edit = (depth: number | undefined, day: string) =>
    ({ type: 'set-week-rain', week: isoDate(firstDay), rain: depth, through: day }) as const;
  const read = (text: string): Read => {
    const entry = weatherEntry('rain', week, text, { plan, season, format });
    if (entry.kind !== 'edit' || entry.edit.type !== 'set-week-rain') return entry;
    return { kind: 'edit', edit: edit(entry.edit.rain, through) };
  };
  const choose = (event: Event) => {
    const day = (event.target as HTMLSelectElement).value;
    entries.chosen.set(key, day);
    if (rain === undefined) entries.take(key);
    else entries.send(key, format.number(rain, MOST_DECIMALS), edit(rain, day));
  };
  return html`<div class="rain-entry" role="group" aria-label=${say.title}>
    <span>${say.title}</span>
    ${entryField(
      {
        key,
        label: say.title,
        text: rain === undefined ? '' : format.number(rain, MOST_DECIMALS),
        unit: format.unit('depth'),
        read,
      },
      entries,
      reader,
    )}
    <label>${say.through}
      <select .value=${live(through)} @change=${choose}>
        ${[0, 1, 2, 3, 4, 5, 6].map((offset) => {
          const day = isoDate(firstDay + offset);
          return html`<option value=${day} ?selected=${day === through}>${format.weekday(firstDay + offset)}</option>`;
        })}
      </select>
    </label>
  </div>`;
}
