/** A calendar of the season: what it is to hold, and the file. */
import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { dayNumber } from '../../engine/calendar.ts';
import { nearestWeek } from '../../engine/season/week-span.ts';
import { type CalendarChoice, calendarSteps } from '../../exchange/calendar/season-to-calendar.ts';
import { isTimeZone } from '../../exchange/calendar/zoned-instant.ts';
import { calendarWords } from '../../language/en/calendar.ts';
import { formatFor } from '../../language/format/format.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import { inSlices } from '../shared/in-slices.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, type ReadyView, readingOf } from '../shared/plan-state.ts';
import { fileNameOf, saveFile } from '../shared/save-file.ts';
import { todayOf } from '../shared/today-here.ts';
import type { FilesHost } from './files-host.ts';
import { minuteOfTime, timeOfMinute } from './time-of-day.ts';

/** Early, before the sun and the wind: common practice, no source. */
const USUAL_OPENING = 300;

/** Minutes before the start at which an entry rings. */
const ALARMS = { none: undefined, start: 0, quarter: 15, evening: 720 } as const;
type Alarm = keyof typeof ALARMS;

type Problem = 'none' | 'noZone' | 'weeksTurned';

export class CalendarForm {
  readonly #host: FilesHost;
  readonly #plan: PlanConsumer;
  #contents: 'runs' | 'turns' = 'runs';
  #first: number | undefined;
  #last: number | undefined;
  /** Zones that are left out, so that one that is added is in. */
  readonly #without = new Set<string>();
  #alarm: Alarm = 'none';
  /** Of a plan that can only be looked at. */
  #timeZone: string | undefined;
  #opensAt: number | undefined;
  #problem: Problem | undefined;

  constructor(host: FilesHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
  }

  get #words() {
    return calendarWords(readingOf(this.#plan.view).language);
  }

  render(view: ReadyView): TemplateResult {
    const { form: say } = this.#words;
    const { timeZone } = this.#choice(view);
    const isUnknown = !isTimeZone(timeZone);
    const isOfDevice = (view.plan.site.timeZone ?? this.#timeZone) === undefined;
    return html`<section class="calendar">
      <h3>${say.title}</h3>
      <p>${say.says}</p>
      <div class="actions">
        ${this.#zoneField(timeZone)} ${isOfDevice ? html`<p class="quiet small">${say.ofDevice}</p>` : nothing}
        ${this.#openingField(view)}
      </div>
      <details>
        <summary>${say.more}</summary>
        <div class="actions">${this.#whatField()} ${this.#weekFields(view)} ${this.#alarmField()}</div>
        ${this.#zonesField(view)}
      </details>
      <div class="actions"><button ?disabled=${isUnknown} @click=${() => this.#save()}>${say.save}</button></div>
      <p class="quiet">${say.again}</p>
      <div role="alert">${isUnknown ? html`<p class="refused">${say.unknownZone(timeZone)}</p>` : this.#problemTemplate()}</div>
    </section>`;
  }

  #problemTemplate(): TemplateResult | typeof nothing {
    return this.#problem === undefined ? nothing : html`<p class="refused">${this.#words.form[this.#problem]}</p>`;
  }

  #choice({
    plan,
    season,
    locale,
  }: ReadyView): Omit<CalendarChoice, 'writtenAt'> & { weeks: { first: number; last: number } } {
    const { weeks } = season.garden.span;
    const last = Math.min(this.#last ?? weeks - 1, weeks - 1);
    return {
      planName: plan.name,
      planIdentity: plan.identity,
      units: plan.units,
      locale,
      timeZone: plan.site.timeZone ?? this.#timeZone ?? new Intl.DateTimeFormat().resolvedOptions().timeZone,
      opensAt: minuteOfTime(plan.supply?.window?.opensAt ?? '') ?? this.#opensAt ?? USUAL_OPENING,
      contents: this.#contents,
      weeks: {
        first: Math.min(
          this.#first ?? nearestWeek(season.garden.span, dayNumber(todayOf(this.#host.today))),
          weeks - 1,
        ),
        last,
      },
      zones: new Set(plan.zones.map(({ id }) => id).filter((id) => !this.#without.has(id))),
      alarmMinutes: ALARMS[this.#alarm],
    };
  }

  #changed(): void {
    this.#problem = undefined;
    this.#host.requestUpdate();
  }

  #select<Value extends string>(
    label: string,
    options: readonly (readonly [Value, string])[],
    chosen: Value,
    choose: (value: Value) => void,
  ): TemplateResult {
    const change = ({ target }: Event) => {
      choose((target as HTMLSelectElement).value as Value);
      this.#changed();
    };
    return html`<label>${label}
      <select .value=${live(chosen)} @change=${change}>
        ${options.map(([value, text]) => html`<option value=${value} ?selected=${value === chosen}>${text}</option>`)}
      </select></label>`;
  }

  #zoneField(timeZone: string): TemplateResult {
    const known = Intl.supportedValuesOf('timeZone');
    const all = known.includes(timeZone) ? known : [timeZone, ...known];
    return this.#select(
      this.#words.form.timeZone,
      all.map((zone) => [zone, zone.replaceAll('_', ' ')] as const),
      timeZone,
      (chosen) => {
        if (this.#plan.view.readOnly) this.#timeZone = chosen;
        else this.#plan.edit({ type: 'change-site', change: { timeZone: chosen } });
      },
    );
  }

  #openingField(view: ReadyView): TemplateResult {
    const change = ({ target }: Event) => {
      const opensAt = (target as HTMLInputElement).value;
      if (opensAt !== '' && view.readOnly) this.#opensAt = minuteOfTime(opensAt);
      else if (opensAt !== '') {
        const window = { hoursPerDay: DEFAULTS.windowHoursPerDay, ...view.plan.supply?.window, opensAt };
        this.#plan.edit({ type: 'change-supply', change: { window } });
      }
      this.#changed();
    };
    return html`<label>${this.#words.form.opensAt}
      <input type="time" required .value=${live(timeOfMinute(this.#choice(view).opensAt))} @change=${change} /></label>`;
  }

  #whatField(): TemplateResult {
    const { form: say } = this.#words;
    const options = [
      ['runs', say.contents.runs],
      ['turns', say.contents.turns],
    ] as const;
    return this.#select(say.what, options, this.#contents, (contents) => {
      this.#contents = contents;
    });
  }

  #weekFields(view: ReadyView): TemplateResult {
    const { form: say } = this.#words;
    const { firstDay, weeks } = view.season.garden.span;
    const { weeks: chosen } = this.#choice(view);
    const { day } = formatFor(readingOf(view));
    const options = Array.from({ length: weeks }, (_, week) => [String(week), day(firstDay + 7 * week)] as const);
    return html`${this.#select(say.from, options, String(chosen.first), (week) => {
      this.#first = Number(week);
    })}
    ${this.#select(say.through, options, String(chosen.last), (week) => {
      this.#last = Number(week);
    })}`;
  }

  #alarmField(): TemplateResult {
    const { form: say } = this.#words;
    const options = (Object.keys(ALARMS) as Alarm[]).map((alarm) => [alarm, say.alarms[alarm]] as const);
    return this.#select(say.rings, options, this.#alarm, (alarm) => {
      this.#alarm = alarm;
    });
  }

  #zonesField({ plan }: ReadyView): TemplateResult {
    const toggle = (id: string) => (event: Event) => {
      if ((event.target as HTMLInputElement).checked) this.#without.delete(id);
      else this.#without.add(id);
      this.#changed();
    };
    return html`<fieldset>
      <legend>${this.#words.form.zones}</legend>
      ${plan.zones.map(
        ({ id, name }) => html`<label class="check"
          ><input type="checkbox" .checked=${live(!this.#without.has(id))} @change=${toggle(id)} /><bdi>${name}</bdi></label
        >`,
      )}
    </fieldset>`;
  }

  #save(): void {
    const { view } = this.#plan;
    if (!isReady(view)) return;
    const choice = this.#choice(view);
    if (choice.zones?.size === 0) this.#problem = 'noZone';
    else if (choice.weeks.last < choice.weeks.first) this.#problem = 'weeksTurned';
    else {
      inSlices({
        steps: calendarSteps(view.season, { ...choice, writtenAt: Date.now() }),
        isWanted: () => this.#host.isConnected,
        onEnd: (text) => this.#saveText(text, view.plan.name),
      });
      return;
    }
    this.#host.requestUpdate();
  }

  #saveText(text: string, planName: string): void {
    this.#problem = text.includes('\r\nBEGIN:VEVENT') ? undefined : 'none';
    if (this.#problem === undefined) {
      saveFile(this.#words.file(fileNameOf(planName)), text, 'text/calendar;charset=utf-8');
    }
    this.#host.requestUpdate();
  }
}
