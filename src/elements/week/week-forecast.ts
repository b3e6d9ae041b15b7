/** What is forecast for days of the week, entered today: only mornings from today on know it. */
import { html, nothing, type TemplateResult } from 'lit';
import { type DayNumber, type IsoDate, isoDate } from '../../engine/calendar.ts';
import { toSi } from '../../engine/units.ts';
import { doubtsWords } from '../../language/en/doubts.ts';
import { weekWords } from '../../language/en/week.ts';
import { formatFor } from '../../language/format/format.ts';
import { parseQuantity } from '../../language/format/parse-quantity.ts';
import { changed } from '../../plan/edits/change.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan, PlanForecast } from '../../plan/schema/plan-schema.ts';
import { MOST_ETO_MM_PER_DAY } from '../../sheet/entry/weather-entry.ts';
import { type ReadyView, readingOf } from '../shared/plan-state.ts';
import { entryField, type Read, type WeekEntries } from './week-entries.ts';

export interface ForecastEntry {
  readonly view: ReadyView;
  readonly firstDay: DayNumber;
  readonly today: DayNumber;
  readonly entries: WeekEntries;
}

type Kind = 'rain' | 'eto';

const MOST_DECIMALS = 6;

/** Nothing in a week of which no day is left. */
export function weekForecast({ view, firstDay, today, entries }: ForecastEntry): TemplateResult | typeof nothing {
  if (firstDay + 6 < today) return nothing;
  const { plan } = view;
  const reader = readingOf(view);
  const format = formatFor(reader);
  const say = weekWords(reader.language).forecast;
  const from = Math.max(firstDay, today);
  const days = Array.from({ length: firstDay + 7 - from }, (_, at) => from + at);
  const field = (day: DayNumber, kind: Kind) => {
    const known = knownFigure(plan, isoDate(day), kind);
    return entryField(
      {
        key: `forecast-${isoDate(day)}-${kind}`,
        label: say[kind](format.weekday(day)),
        text: known === undefined ? '' : format.number(known.figure, MOST_DECIMALS),
        unit: format.unit('depth'),
        read: (text) => readForecast(text, { kind, day, known, view, today }),
      },
      entries,
      reader,
    );
  };
  return html`<details class="forecast">
    <summary>${say.title}</summary>
    <p class="quiet small">${say.about(format, today)}</p>
    <table>
      <thead><tr><th scope="col">${say.day}</th><th scope="col">${say.rainHead}</th><th scope="col">${say.etoHead}</th></tr></thead>
      <tbody>
        ${days.map((day) => html`<tr><th scope="row">${format.weekday(day)}</th><td>${field(day, 'rain')}</td><td>${field(day, 'eto')}</td></tr>`)}
      </tbody>
    </table>
  </details>`;
}

interface ForecastFigure {
  readonly kind: Kind;
  readonly day: DayNumber;
  readonly known: ReturnType<typeof knownFigure>;
  readonly view: ReadyView;
  readonly today: DayNumber;
}

function readForecast(text: string, { kind, day, known, view, today }: ForecastFigure): Read {
  const { plan } = view;
  const reader = readingOf(view);
  const edit = (issued: string, figure: number | undefined): Read => ({
    kind: 'edit',
    edit: forecastEdit(plan, issued, isoDate(day), { [kind]: figure }),
  });
  if (text.trim() === '') return known === undefined ? { kind: 'same' } : edit(known.issued, undefined);
  const parsed = parseQuantity(text, 'depth', reader);
  if (parsed.kind !== 'number') return { kind: 'refused', why: parsed.why };
  if (parsed.value === known?.figure) return { kind: 'same' };
  if (kind === 'eto' && toSi(parsed.value, 'depth', plan.units) > MOST_ETO_MM_PER_DAY) {
    const say = doubtsWords(reader.language)['too-much-eto-a-day'];
    return { kind: 'refused', why: say(formatFor(reader), MOST_ETO_MM_PER_DAY) };
  }
  return edit(isoDate(today), parsed.value);
}

/** What is forecast for the days of the week to come. */
export function forecastSentence({ view, firstDay, today }: ForecastEntry): TemplateResult | typeof nothing {
  const { plan } = view;
  const reader = readingOf(view);
  const format = formatFor(reader);
  const say = weekWords(reader.language).forecast;
  const from = Math.max(firstDay, today);
  const days = Array.from({ length: Math.max(0, firstDay + 7 - from) }, (_, at) => from + at).flatMap((day) => {
    const rain = knownFigure(plan, isoDate(day), 'rain')?.figure;
    return rain === undefined || rain === 0 ? [] : [say.onDay(format, day, toSi(rain, 'depth', plan.units))];
  });
  return days.length === 0 ? nothing : html`<p>${say.says(format, days)} <span class="quiet">${say.counts}</span></p>`;
}

interface KnownFigure {
  readonly figure: number;
  readonly issued: IsoDate;
}

/** By the forecast that was issued last. */
function knownFigure({ log }: Plan, day: IsoDate, kind: Kind): KnownFigure | undefined {
  const last = log?.forecasts?.findLast(({ days }) => days[day]?.[kind] !== undefined);
  const figure = last?.days[day]?.[kind];
  return last === undefined || figure === undefined ? undefined : { figure, issued: last.issued };
}

type ForecastDay = PlanForecast['days'][string];

/** The forecast of a day of issue with other figures for one day; without any figure it goes. */
function forecastEdit(
  { log }: Plan,
  issued: IsoDate,
  day: IsoDate,
  change: Partial<Record<Kind, number | undefined>>,
): Edit {
  const before = log?.forecasts?.find((forecast) => forecast.issued === issued)?.days ?? {};
  const { [day]: known = {}, ...others } = before;
  const after: ForecastDay = changed<ForecastDay>(known, { ...change, source: undefined });
  const days = Object.keys(after).length === 0 ? others : { ...others, [day]: after };
  const sorted = Object.fromEntries(Object.entries(days).sort(([one], [other]) => (one < other ? -1 : 1)));
  return { type: 'set-forecast', issued, days: Object.keys(sorted).length === 0 ? undefined : sorted };
}
