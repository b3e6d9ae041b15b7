/** The weather of this season so far: how much of it was typed, filled in or estimated, and each day with where its figures come from. */
import { html, nothing, type TemplateResult } from 'lit';
import { type DayNumber, dayNumber, type IsoDate, isoDate } from '../../engine/calendar.ts';
import { toSi } from '../../engine/units.ts';
import { weatherWords } from '../../language/en/weather.ts';
import { ownValue } from '../../plan/edits/change.ts';
import { readWeek } from '../../plan/edits/week-records.ts';
import { readingSource, type SourcedReading } from '../../plan/reading-sources.ts';
import type { Plan, PlanDay } from '../../plan/schema/plan-schema.ts';
import { seasonDays, weekDays } from '../../plan/season-weeks.ts';
import type { FormContext } from '../garden/form-context.ts';

/** Where a day's figure comes from; 'week' where a total of its week has it, 'none' where nobody knows it. */
type Origin = keyof ReturnType<typeof weatherWords>['season']['from'];

type Shown = 'rain' | 'eto';

export interface ReadingsFold {
  readonly isOpen: boolean;
  readonly toggle: (isOpen: boolean) => void;
}

export function readingsSection(context: FormContext, today: IsoDate, fold: ReadingsFold): TemplateResult {
  const { plan, reader, format } = context;
  const say = weatherWords(reader.language).season;
  const { first, last } = seasonDays(plan.season);
  const now = dayNumber(today);
  const passed = daysFrom(first, Math.min(last, now - 1));
  const ahead = forecastDays(plan, Math.max(first, now), last);
  const toggled = (event: Event) => fold.toggle((event.currentTarget as HTMLDetailsElement).open);
  return html`<section class="season">
    <h3>${say.title}</h3>
    ${passed.length === 0 ? html`<p class="quiet">${say.notBegun(format, first)}</p>` : html`<ul>${(['rain', 'eto'] as const).map((kind) => html`<li>${countsOf(kind, passed, context)}</li>`)}</ul>`}
    ${ahead.length === 0 ? nothing : html`<p>${say.ahead(format, ahead.length, dayNumber(lastIssue(plan) ?? today))}</p>`}
    <p class="help">${say.help}</p>
    ${
      passed.length + ahead.length === 0
        ? nothing
        : html`<details class="more" ?open=${fold.isOpen} @toggle=${toggled}>
            <summary>${say.table}</summary>
            <div class="part-body">${fold.isOpen ? dayTable([...ahead.toReversed(), ...passed.toReversed()], now, context) : nothing}</div>
          </details>`
    }
  </section>`;
}

const daysFrom = (first: DayNumber, last: DayNumber): readonly DayNumber[] =>
  Array.from({ length: Math.max(0, last - first + 1) }, (_, at) => first + at);

const lastIssue = ({ log }: Plan): string | undefined => log?.forecasts?.at(-1)?.issued;

/** Days to come of which the last forecast has something. */
function forecastDays({ log }: Plan, from: DayNumber, to: DayNumber): readonly DayNumber[] {
  const days = log?.forecasts?.at(-1)?.days ?? {};
  return daysFrom(from, to).filter((day) => Object.hasOwn(days, isoDate(day)));
}

const ORDER = [
  'typed',
  'week',
  'file',
  'service',
  'estimate',
  'temperatures',
  'none',
] as const satisfies readonly Origin[];

function countsOf(kind: Shown, days: readonly DayNumber[], { plan, reader, format }: FormContext): string {
  const say = weatherWords(reader.language).season;
  const counts = new Map<Origin, number>();
  for (const day of days) {
    const origin = originOf(kind, day, plan);
    counts.set(origin, (counts.get(origin) ?? 0) + 1);
  }
  const parts = ORDER.flatMap((origin) => {
    const count = counts.get(origin);
    return count === undefined ? [] : [say.days(format, count, say.from[origin])];
  });
  return say.counts[kind](format, parts);
}

function dayOf({ log }: Plan, day: DayNumber): PlanDay {
  return ownValue(log?.days, isoDate(day)) ?? {};
}

function originOf(kind: Shown, day: DayNumber, plan: Plan): Origin {
  const own = dayOf(plan, day);
  if (own[kind] !== undefined) return sourceName(own, kind);
  if (kind === 'eto' && own.minTemperature !== undefined && own.maxTemperature !== undefined) return 'temperatures';
  const week = readWeek(plan.log?.weeks, plan.season, isoDate(day));
  if (week?.[kind] === undefined) return 'none';
  const { last } = weekDays(plan.season, isoDate(day));
  const through = kind === 'rain' && week.rainThrough !== undefined ? dayNumber(week.rainThrough) : last;
  return day <= through ? 'week' : 'none';
}

const sourceName = (day: PlanDay, reading: SourcedReading): Origin => readingSource(day, reading) ?? 'typed';

function dayTable(days: readonly DayNumber[], now: DayNumber, context: FormContext): TemplateResult {
  const { reader, format } = context;
  const say = weatherWords(reader.language).season;
  return html`<table class="band">
    <thead><tr><th scope="col">${say.day}</th><th scope="col">${say.rain}</th><th scope="col">${say.eto}</th></tr></thead>
    <tbody>
      ${days.map(
        (day) => html`<tr>
        <th scope="row">${format.day(day, 'short')}</th>
        <td>${day < now ? readCell('rain', day, context) : forecastCell('rain', day, context)}</td>
        <td>${day < now ? readCell('eto', day, context) : forecastCell('eto', day, context)}</td>
      </tr>`,
      )}
    </tbody>
  </table>`;
}

function readCell(kind: Shown, day: DayNumber, { plan, reader, format }: FormContext): TemplateResult {
  const say = weatherWords(reader.language).season;
  const own = dayOf(plan, day);
  const origin = originOf(kind, day, plan);
  const degrees = (reading: 'minTemperature' | 'maxTemperature') =>
    format.quantity(toSi(own[reading] ?? Number.NaN, 'temperature', plan.units), 'temperature');
  if (origin === 'temperatures') {
    const from = say.from[sourceName(own, 'maxTemperature')];
    return figure(say.lowHigh(degrees('minTemperature'), degrees('maxTemperature')), from);
  }
  return figure(depthText(own[kind], plan, format), say.from[origin]);
}

function forecastCell(kind: Shown, day: DayNumber, { plan, reader, format }: FormContext): TemplateResult {
  const say = weatherWords(reader.language).season;
  const { source, ...figures } = plan.log?.forecasts?.at(-1)?.days[isoDate(day)] ?? {};
  const from = source === undefined ? say.from.typed : say.from[source];
  return figure(depthText(figures[kind], plan, format), say.forecast(from));
}

function depthText(
  depth: number | undefined,
  { units }: Plan,
  { quantity }: FormContext['format'],
): string | undefined {
  return depth === undefined ? undefined : quantity(toSi(depth, 'depth', units), 'depth');
}

const figure = (text: string | undefined, from: string): TemplateResult =>
  html`${text ?? '\u2013'} <span class="quiet small">${from}</span>`;
