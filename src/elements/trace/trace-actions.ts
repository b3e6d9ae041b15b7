/** What can be done with a zone's week, under the answer why it is so. */
import { html, nothing, type TemplateResult } from 'lit';
import { isoDate } from '../../engine/calendar.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { zoneState } from '../../engine/season/zone-week.ts';
import { settableRun } from '../../explain/settable-minutes.ts';
import { entryWords } from '../../language/en/entry.ts';
import { traceWords } from '../../language/en/trace.ts';
import { formatFor } from '../../language/format/format.ts';
import { parseNumber } from '../../language/format/parse-number.ts';
import type { Reader } from '../../language/reader.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { MINUTES_A_WEEK } from '../../plan/schema/records.ts';
import { NOTE_LENGTH } from '../../plan/schema/text.ts';

export interface ZoneWeek {
  readonly zone: ZoneSeason;
  readonly week: number;
  /** First day of the season. */
  readonly firstDay: number;
  readonly reader: Reader;
  readonly edit: (edit: Edit) => void;
}

export function zoneWeekActions(asked: ZoneWeek): TemplateResult | typeof nothing {
  const { zone, week, firstDay, reader, edit } = asked;
  const say = traceWords(reader.language).actions;
  const place = { zone: zone.zone.id, week: isoDate(firstDay + 7 * week) };
  const choice = zone.zone.choices.get(week);
  const isClosed = choice?.closed === true;
  if (!isClosed && zoneState(zone, week) === 'off') return nothing;
  return html`<div class="actions" role="group" aria-label=${say.title}>
    ${isClosed ? nothing : minutesForm(asked, (minutes) => edit({ type: 'set-minutes', ...place, minutes }))}
    ${choice?.minutes === undefined ? nothing : html`<button @click=${() => edit({ type: 'set-minutes', ...place, minutes: undefined })}>${say.useComputed}</button>`}
    <button @click=${() => edit({ type: 'close-week', ...place, closed: !isClosed })}>${isClosed ? say.open : say.close}</button>
    ${noteForm(asked, choice?.note ?? '', (note) => edit({ type: 'set-note', ...place, note: note === '' ? undefined : note }))}
  </div>`;
}

function minutesForm(asked: ZoneWeek, set: (minutes: number) => void): TemplateResult {
  const { reader } = asked;
  const say = traceWords(reader.language).actions;
  const submitted = (event: SubmitEvent) => {
    event.preventDefault();
    const form = event.target as HTMLFormElement;
    const field = form.elements.namedItem('minutes') as HTMLInputElement;
    const typed = parseNumber(field.value, reader.language);
    field.setCustomValidity(typed.kind === 'number' ? '' : say.whatMinutes);
    if (typed.kind !== 'number') field.reportValidity();
    else {
      const [minutes, became] = asSet(typed.value, asked);
      const told = form.closest('details')?.nextElementSibling as HTMLOutputElement;
      told.value = became;
      set(minutes);
      fold(form);
    }
  };
  const typing = ({ target }: Event) => (target as HTMLInputElement).setCustomValidity('');
  return html`<details>
    <summary>${say.setMinutes}</summary>
    <form @submit=${submitted}>
      <label>${say.minutes} <input name="minutes" inputmode="decimal" autocomplete="off" required @input=${typing} /></label>
      <button>${say.set}</button>
    </form>
  </details>
  <output></output>`;
}

/** Minutes of the week as the timer can be set to them, and a sentence where those are others than what was typed. */
function asSet(typed: number, { zone, week, reader }: ZoneWeek): readonly [minutes: number, became: string] {
  if (!(typed >= 0 && typed <= MINUTES_A_WEEK)) return [typed, ''];
  const run = settableRun(zone, week, typed);
  if (run.minutes === typed) return [typed, ''];
  const rounded = { ...run, stepMinutes: zone.zone.timerStepMinutes };
  return [run.minutes, entryWords(reader.language).settable(formatFor(reader), typed, rounded)];
}

function noteForm({ reader }: ZoneWeek, before: string, set: (note: string) => void): TemplateResult {
  const say = traceWords(reader.language).actions;
  const submitted = (event: SubmitEvent) => {
    event.preventDefault();
    const form = event.target as HTMLFormElement;
    set((form.elements.namedItem('note') as HTMLTextAreaElement).value.trim());
    fold(form);
  };
  return html`<details>
    <summary>${before === '' ? say.addNote : say.changeNote}</summary>
    <form @submit=${submitted}>
      <label>${say.note} <textarea name="note" rows="2" maxlength=${NOTE_LENGTH} .value=${before}></textarea></label>
      <button>${say.set}</button>
    </form>
  </details>`;
}

/** The keyboard stays where the form was opened. */
function fold(form: HTMLFormElement): void {
  const details = form.closest('details');
  if (details === null) return;
  details.open = false;
  details.querySelector('summary')?.focus();
  form.reset();
}
