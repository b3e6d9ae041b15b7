/** A hot week or a dry month: tried, compared with the plan as it is, and kept in the plan or beside it. */
import { html, nothing, type ReactiveControllerHost, type TemplateResult } from 'lit';
import { dayNumber, isoDate } from '../../engine/calendar.ts';
import type { Season } from '../../engine/season/season.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';
import { seasonSupply } from '../../engine/supply/season-supply.ts';
import { weekSum } from '../../engine/weather.ts';
import { describeEdit } from '../../language/describe-edit.ts';
import { weatherWords } from '../../language/en/weather.ts';
import type { Format } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import type { Reader } from '../../language/reader.ts';
import type { PlanWhatIf } from '../../plan/schema/plan-schema.ts';
import { NAME_LENGTH } from '../../plan/schema/text.ts';
import { gardenFigures } from '../../remedies/mix/mix-figures.ts';
import type { FormContext } from '../garden/form-context.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { type DepartureEdit, WeatherTrial } from './weather-trial.ts';

const HOT_WEEK = { weeks: 1, eto: 130, rain: 100 } as const;
const DRY_MONTH = { weeks: 4, eto: 100, rain: 0 } as const;

type Tried = Extract<WeatherTrial['state'], { readonly step: 'done' }>;

export class UnusualWeeks {
  readonly #trial: WeatherTrial;

  constructor(host: ReactiveControllerHost, plan: PlanConsumer) {
    this.#trial = new WeatherTrial(host, plan);
  }

  render(context: FormContext, today: string, undo: () => void): TemplateResult {
    return unusualWeeks(context, this.#trial, today, undo);
  }
}

function unusualWeeks(context: FormContext, trial: WeatherTrial, today: string, undo: () => void): TemplateResult {
  const { form, reader } = context;
  const say = weatherWords(reader.language).unusual;
  const { state } = trial;
  return html`<section class="unusual">
    <h3>${say.title}</h3>
    <p class="quiet">${say.about}</p>
    ${expected(context)}
    ${form.readOnly ? nothing : tryForm(context, trial, today)}
    <div role="status">
      ${state.step === 'busy' ? html`<p>${say.busy}</p>` : nothing}
      ${
        state.step === 'kept'
          ? html`<p>${say.kept} <button class="plain" name="undo-trial" @click=${undo}>${weatherWords(reader.language).undo}</button></p>`
          : nothing
      }
      ${state.step === 'done' ? tried(context, trial, state) : nothing}
    </div>
    ${beside(context, trial)}
  </section>`;
}

const asEdit = (departure: Omit<DepartureEdit, 'type'>): DepartureEdit => ({ type: 'set-departure', ...departure });

/** What the plan expects already. */
function expected({ plan, form, reader }: FormContext): TemplateResult | typeof nothing {
  const { departures = [] } = plan.site;
  if (departures.length === 0) return nothing;
  const say = weatherWords(reader.language).unusual;
  return html`<p>${say.inPlan}</p>
    <ul class="departures">
      ${departures.map((departure) => {
        const { from, weeks } = departure;
        const what = describeEdit(plan, asEdit(departure), reader);
        const remove = () => form.send('departure', '', asEdit({ from, weeks }));
        return html`<li>${what} ${form.readOnly ? nothing : html`<button class="plain" aria-label=${say.removeLabel(what)} @click=${remove}>${say.remove}</button>`}</li>`;
      })}
    </ul>`;
}

function tryForm({ season, reader, format }: FormContext, trial: WeatherTrial, today: string): TemplateResult {
  const say = weatherWords(reader.language).unusual;
  const { firstDay, weeks } = season.garden.span;
  const starts = Array.from({ length: weeks }, (_, week) => firstDay + 7 * week);
  const first = hottestFrom(season, dayNumber(today));
  const send = (target: HTMLFormElement) => {
    const fields = new FormData(target);
    const share = (name: string) => {
      const percent = Number(fields.get(name));
      return percent === 100 ? {} : { [name]: percent / 100 };
    };
    const departure = { from: String(fields.get('from')), weeks: Number(fields.get('weeks')) };
    void trial.try([asEdit({ ...departure, ...share('eto'), ...share('rain') })]);
  };
  const submitted = (event: Event) => {
    event.preventDefault();
    send(event.currentTarget as HTMLFormElement);
  };
  const preset = (values: Readonly<Record<string, number>>) => (event: Event) => {
    const { form } = event.currentTarget as HTMLButtonElement;
    if (form === null) return;
    for (const [name, value] of Object.entries(values)) {
      (form.elements.namedItem(name) as HTMLInputElement).value = String(value);
    }
    send(form);
  };
  const number = (name: 'weeks' | 'eto' | 'rain', value: number, most: number) =>
    html`<label class="field"><span class="label">${say[name]}</span>
      <input type="number" name=${name} required min=${name === 'weeks' ? 1 : 0} max=${most} step="1" value=${value} /></label>`;
  return html`<form class="try" @submit=${submitted}>
    <div class="actions">
      <button type="button" name="hot-week" @click=${preset(HOT_WEEK)}>${say.hot}</button>
      <button type="button" name="dry-month" @click=${preset(DRY_MONTH)}>${say.dry}</button>
    </div>
    <div class="fields">
      <label class="field"><span class="label">${say.from}</span>
        <select name="from">
          ${starts.map((day, week) => html`<option value=${isoDate(day)} ?selected=${week === first}>${format.day(day)}</option>`)}
        </select></label>
      ${number('weeks', HOT_WEEK.weeks, weeks)} ${number('eto', HOT_WEEK.eto, 300)} ${number('rain', HOT_WEEK.rain, 1000)}
    </div>
    <div class="actions"><button name="try-weather">${say.try}</button></div>
  </form>`;
}

/** The week of the most reference ET that has not passed. */
function hottestFrom({ weather, garden }: Season, today: number): number {
  const from = Math.min(garden.span.weeks - 1, Math.max(0, Math.ceil((today - garden.span.firstDay) / 7)));
  const weeks = Array.from({ length: garden.span.weeks - from }, (_, place) => from + place);
  return weeks.reduce(
    (most, week) => (weekSum(weather.eto.mm, week) > weekSum(weather.eto.mm, most) ? week : most),
    from,
  );
}

function tried(context: FormContext, trial: WeatherTrial, { edits, season, from }: Tried): TemplateResult {
  const { reader, form } = context;
  const say = weatherWords(reader.language).unusual;
  const what = edits.map((edit) => describeEdit(from, edit, reader)).join('; ');
  const beside = (event: Event) => {
    event.preventDefault();
    const name = String(new FormData(event.currentTarget as HTMLFormElement).get('name')).trim();
    if (name !== '') trial.keep(edits, name);
  };
  const drop = html`<button name="drop-weather" @click=${() => trial.drop()}>${say.drop}</button>`;
  return html`<div class="preview" role="group" aria-label=${say.tried(what)}>
    <p><strong>${say.tried(what)}</strong></p>
    ${comparison(context, season)}
    <div class="actions">
      ${form.readOnly ? nothing : html`<button class="main" name="keep-weather" @click=${() => trial.keep(edits)}>${say.keep}</button>`}
      ${drop}
    </div>
    ${
      form.readOnly
        ? nothing
        : html`<form class="actions" @submit=${beside}>
            <label>${say.name} <input name="name" required maxlength=${NAME_LENGTH} .value=${what} /></label>
            <button name="keep-beside">${say.keepBeside}</button>
          </form>`
    }
  </div>`;
}

function comparison({ season, reader, format }: FormContext, other: Season): TemplateResult {
  const say = weatherWords(reader.language).unusual;
  const [before, after] = [figuresOf(season, format, reader), figuresOf(other, format, reader)];
  return html`<table class="band">
    <thead><tr><td></td><th scope="col">${say.asIs}</th><th scope="col">${say.with}</th></tr></thead>
    <tbody>
      ${before.map(
        ([row, figure], place) =>
          html`<tr><th scope="row">${say.rows[row]}</th><td>${figure}</td><td>${after[place]?.[1]}</td></tr>`,
      )}
    </tbody>
  </table>`;
}

type Row = keyof ReturnType<typeof weatherWords>['unusual']['rows'];

/** Of the whole garden and season; rows of a supply's parts only where it has them. */
function figuresOf(season: Season, format: Format, reader: Reader): readonly (readonly [Row, string])[] {
  const say = weatherWords(reader.language).unusual;
  const { litres, shortDays } = gardenFigures(season);
  const { tank, allowance } = seasonSupply(season);
  const weeks = Array.from({ length: season.garden.span.weeks }, (_, week) => week);
  const minutes = season.zones.reduce(
    (sum, zone) => sum + weeks.reduce((ofZone, week) => ofZone + zoneFigure(zone, 'minutes', week), 0),
    0,
  );
  const { allowanceLitresPerWeek: perWeek, allowanceLitresPerSeason: perSeason } = season.garden.supply;
  const usedUp = allowance?.firstWeekOverSeason ?? -1;
  return [
    ['water', format.quantity(litres, 'volume')],
    ['minutes', format.duration(minutes)],
    ['short', format.number(shortDays)],
    ...(allowance === undefined || perWeek === undefined
      ? []
      : [['weeksOver', format.number(allowance.weeksOver.length)] as const]),
    ...(perSeason === undefined
      ? []
      : [
          [
            'seasonOver',
            usedUp < 0 ? say.enough : say.usedUp(format, season.garden.span.firstDay + 7 * usedUp),
          ] as const,
        ]),
    ...(tank === undefined
      ? []
      : [
          [
            'tank',
            format.quantity(
              tank.besidesL.reduce((sum, litresOfDay) => sum + litresOfDay, 0),
              'volume',
            ),
          ] as const,
        ]),
  ];
}

const isWeather = ({ edits }: PlanWhatIf): boolean => edits.every(({ type }) => type === 'set-departure');

/** What-ifs of the weather alone; the others stand where zones are compared. */
function beside({ plan, form, reader }: FormContext, trial: WeatherTrial): TemplateResult | typeof nothing {
  const kept = (plan.whatIfs ?? []).filter(isWeather);
  if (kept.length === 0) return nothing;
  const say = weatherWords(reader.language).unusual;
  return html`<p>${say.beside}</p>
    <ul class="departures">
      ${kept.map(({ name, edits }) => {
        const called = isolated(name);
        const remove = () => form.send('departure', '', { type: 'set-what-if', name, edits: undefined });
        return html`<li>${called}
          <button class="plain" aria-label=${say.showLabel(called)} @click=${() => void trial.try(edits as readonly DepartureEdit[])}>${say.show}</button>
          ${form.readOnly ? nothing : html`<button class="plain" aria-label=${say.removeLabel(called)} @click=${remove}>${say.remove}</button>`}</li>`;
      })}
    </ul>`;
}
