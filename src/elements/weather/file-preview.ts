/** A file as it was understood: what is left out, what is missing, what a person has to say first. */

import { html, nothing, type TemplateResult } from 'lit';
import { dayNumber, type IsoDate } from '../../engine/calendar.ts';
import type { DailyRecord, RecordReading } from '../../engine/record/daily-record.ts';
import { MOST_BRIDGED_DAYS, recordGaps } from '../../engine/record/record-gaps.ts';
import type {
  LeftOut,
  WeatherFile,
  WeatherFileChoice,
  WeatherQuestion,
} from '../../exchange/weather-file/weather-file.ts';
import { weatherWords } from '../../language/en/weather.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated, isolatedText } from '../../language/format/isolated.ts';
import type { Reader } from '../../language/reader.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { seasonDays } from '../../plan/season-weeks.ts';
import { refusalWords } from './session-words.ts';
import type { SessionState, WeatherSession } from './weather-session.ts';

type FileState = Extract<SessionState, { readonly step: 'file' }>;

export function filePreview(
  state: FileState,
  { plan, reader, today }: { readonly plan: Plan; readonly reader: Reader; readonly today: IsoDate },
  session: WeatherSession,
): TemplateResult {
  const { file } = state;
  const say = weatherWords(reader.language).file;
  const { record } = file;
  return html`<div class="preview" role="group" aria-label=${state.name}>
    <p><strong>${isolated(state.name)}</strong> ${say.readAs(say.kinds[file.kind])} ${file.place?.name === undefined ? nothing : say.at(isolatedText(file.place.name))}</p>
    ${file.refused === undefined ? nothing : html`<p class="refused" role="alert">${refusalWords(file.refused, reader)}</p>`}
    ${file.asked.map((question) => askTemplate(question, file, reader, session))}
    ${record === undefined ? nothing : understood(file, record, reader)}
    ${record === undefined ? nothing : gapsTemplate(record, state, reader, session)}
    <div class="actions">
      ${record === undefined ? nothing : takeTemplate(state, record, { plan, reader, today }, session)}
      <button @click=${() => session.close()}>${say.close}</button>
    </div>
  </div>`;
}

function understood(file: WeatherFile, record: DailyRecord, reader: Reader): TemplateResult {
  const say = weatherWords(reader.language).file;
  const format = formatFor(reader);
  const readings = (Object.keys(record.columns) as RecordReading[]).map((reading) => say.readings[reading]);
  const units = file.units.temperature ?? file.units.depth;
  const last = record.firstDay + record.dayCount - 1;
  return html`<p>${say.covers(format, record.firstDay, last, record.dayCount, readings)}
      ${units === undefined ? nothing : say.units.by[units.by](say.units[units.system])}</p>
    <ul>
      ${file.leftOut.map((each) => html`<li>${leftOutWords(each, reader)}</li>`)}
      ${file.faults.length === 0 ? nothing : html`<li>${say.rows(format, file.faults.length)}</li>`}
    </ul>`;
}

function leftOutWords({ cause, count, reading }: LeftOut, reader: Reader): string {
  const say = weatherWords(reader.language).file;
  return capital(say.leftOut[cause](formatFor(reader), count, say.readings[reading]), reader);
}

const capital = (sentence: string, { locale }: Reader): string =>
  sentence.charAt(0).toLocaleUpperCase(locale) + sentence.slice(1);

const SHOWN_GAPS = ['rainMm', 'etoMm', 'minTemperatureC', 'maxTemperatureC'] as const;

/** What is missing of each reading, and whether short gaps are to be filled. */
function gapsTemplate(
  record: DailyRecord,
  { bridge }: FileState,
  reader: Reader,
  session: WeatherSession,
): TemplateResult | typeof nothing {
  const say = weatherWords(reader.language).file;
  const format = formatFor(reader);
  const found = SHOWN_GAPS.flatMap((reading) => {
    const gaps = recordGaps(record, reading);
    const [longest] = gaps.toSorted((one, other) => other.days - one.days);
    if (longest === undefined) return [];
    const missing = gaps.reduce((sum, { days }) => sum + days, 0);
    const last = longest.firstDay + longest.days - 1;
    return [
      { reading, text: capital(say.gap(format, say.readings[reading], missing, longest.firstDay, last), reader) },
    ];
  });
  if (found.length === 0) return nothing;
  const toggle = (event: Event) => session.bridge((event.target as HTMLInputElement).checked);
  return html`<ul>${found.map(({ text }) => html`<li>${text}</li>`)}</ul>
    ${
      found.some(({ reading }) => reading !== 'rainMm')
        ? html`<label class="check"><input type="checkbox" .checked=${bridge} @change=${toggle} />
            <span>${say.bridge(format, MOST_BRIDGED_DAYS)}</span></label>`
        : nothing
    }`;
}

function askTemplate(
  question: WeatherQuestion,
  file: WeatherFile,
  reader: Reader,
  session: WeatherSession,
): TemplateResult {
  const { ask, units } = weatherWords(reader.language).file;
  const options: Readonly<Record<string, string>> = {
    place: Object.fromEntries(file.places.map(({ id, name }) => [id, name ?? id])),
    units: { us: units.us, metric: units.metric },
    decimal: ask.decimals,
    days: ask.orders,
  }[question];
  const chosen = (event: Event) => {
    const { value } = event.target as HTMLSelectElement;
    if (value !== '') void session.answer({ [question]: value } as WeatherFileChoice);
  };
  return html`<label class="field"><span class="label">${ask[question]}</span>
    <select @change=${chosen}>
      <option value="">${ask.choose}</option>
      ${Object.entries(options).map(([value, label]) => html`<option value=${value}>${label}</option>`)}
    </select></label>`;
}

const LEAST_YEAR = 365;

function takeTemplate(
  { name, file, bridge }: FileState,
  record: DailyRecord,
  { plan, reader, today }: { readonly plan: Plan; readonly reader: Reader; readonly today: IsoDate },
  session: WeatherSession,
): TemplateResult {
  const say = weatherWords(reader.language).file;
  const { first, last } = seasonDays(plan.season);
  const until = Math.min(last, dayNumber(today) - 1);
  const hasSeason = record.firstDay <= until && record.firstDay + record.dayCount > first;
  const source = sourceOf(name, record, reader);
  const place = file.place && { latitudeDeg: file.place.latitudeDeg, elevationM: file.place.elevationM };
  const take = () => session.takeClimate(record, () => ({ source, bridge, ...(place === undefined ? {} : { place }) }));
  // A record of a few months is of a season, and has no climate.
  const isOfSeason = hasSeason && record.dayCount < LEAST_YEAR;
  return html`<button class=${isOfSeason ? '' : 'main'} name="take-climate" @click=${() => void take()}>${say.takeClimate}</button>
    ${
      hasSeason
        ? html`<button class=${isOfSeason ? 'main' : ''} name="take-season" @click=${() => void session.takeSeason(record, today, bridge)}>${say.takeSeason}</button>`
        : html`<span class="quiet">${say.noSeason}</span>`
    }`;
}

function sourceOf(name: string, { firstDay, dayCount }: DailyRecord, reader: Reader): string {
  const year = (day: number) => new Date(day * 86_400_000).getUTCFullYear();
  return weatherWords(reader.language).file.source(name, year(firstDay), year(firstDay + dayCount - 1));
}
