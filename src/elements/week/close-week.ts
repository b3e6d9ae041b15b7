/** Closing a week on one screen: rain, what was run by zone and day, the meter, a note, and what changes next week. */
import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { isoDate } from '../../engine/calendar.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { weekWords } from '../../language/en/week.ts';
import { type NextWords, weekCloseWords } from '../../language/en/week-close.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import { readWeek } from '../../plan/edits/week-records.ts';
import { readingOf } from '../shared/plan-state.ts';
import { closeZone } from './close-zone.ts';
import type { Closing } from './closing.ts';
import { meterEntry } from './meter-entry.ts';
import { nextChanges } from './next-week.ts';
import { depthText, rainTubes, readRainMm } from './rain-tubes.ts';
import { asPlannedThrough, closingEdit, dayEdit, runAsItStands } from './week-edits.ts';
import { DAYS, openZones, type WeekContext, type ZoneDay, zoneDays } from './week-model.ts';
import { tableKey, weekTable } from './week-table.ts';

export function closeWeek(closing: Closing): TemplateResult {
  const { context, state, entries, send, change, back } = closing;
  const { view, firstDay, week, today } = context;
  const reader = readingOf(view);
  const say = weekCloseWords(reader.language);
  const words = weekWords(reader.language);
  const format = formatFor(reader);
  const days = DAYS.map((offset) => firstDay + offset);
  const mm = readRainMm(context);
  const all = asPlannedThrough(context, 6);
  return html`<div class="closing">
    <header class="head">
      <div><h2 tabindex="-1">${say.title}</h2><p class="quiet">${say.where(format, firstDay, week + 1, view.season.garden.span.weeks)}</p></div>
      <button class="plain" name="back" @click=${back}>${say.back}</button>
    </header>
    <section>
      <h3>${words.rain.title} <span class="rain">${mm === undefined ? nothing : depthText(mm, view)}</span></h3>
      ${rainTubes({ context, days, entries, isTotal: state.isTotal, setTotal: (isTotal) => change({ isTotal }) })}
    </section>
    <section class="ran">
      <div class="head">
        <div><h3>${say.run}</h3><p class="quiet small">${runSummary(context)}</p></div>
        <button name="as-planned" ?disabled=${all === undefined} @click=${() => all && send(all)}>${say.allAsPlanned}</button>
      </div>
      ${weekTable({
        context,
        hasClimate: true,
        isFull: false,
        canPress: (_, day) => day.minutes > 0 || day.planned > 0 || day.isLogged,
        press: (zone, day) => pressed(closing, zone, day),
        pressName: (zone) => {
          const [first] = zoneDays(context, zone).filter(({ minutes, planned }) => minutes > 0 || planned > 0);
          change(
            state.zone === zone.zone.id ? { zone: undefined } : { zone: zone.zone.id, offset: first?.offset ?? 0 },
          );
        },
        nameLabel: say.edit,
        unfolded: (zone) => (zone.zone.id === state.zone ? closeZone(closing, zone) : nothing),
      })}
      ${tableKey(context)}
    </section>
    ${meterEntry(context, entries)}
    <section>
      <h3><label for="note">${say.note}</label></h3>
      ${noteField(closing)}
    </section>
    <footer class="foot">
      <p role="status">${nextSentence(closing)}</p>
      ${today < firstDay + 6 ? html`<p class="quiet small">${say.early(format, firstDay + 6)}</p>` : nothing}
      <button class="primary wide" name="close" @click=${() => finish(closing)}>${say.closeNow}</button>
    </footer>
  </div>`;
}

/** An empty box is filled as planned; a filled one unfolds its zone. */
function pressed({ context, send, change }: Closing, zone: ZoneSeason, day: ZoneDay): void {
  if (day.state === 'to-run') send(dayEdit(context, zone, day.offset, runAsItStands(context, zone, day.offset)));
  else change({ zone: zone.zone.id, offset: day.offset });
}

function runSummary(context: WeekContext): string {
  const reader = readingOf(context.view);
  const say = weekCloseWords(reader.language);
  const format = formatFor(reader);
  const days = openZones(context).flatMap((zone) => zoneDays(context, zone));
  const open = days.filter(({ state }) => state === 'to-run').length;
  const changed = days.filter(({ state }) => state === 'changed').length;
  if (open > 0) return say.notYet(format, open);
  return changed > 0 ? say.changed(format, changed) : say.asPlanned;
}

function noteField({ context, send }: Closing): TemplateResult {
  const { view, firstDay } = context;
  const { plan } = view;
  const say = weekCloseWords(readingOf(view).language);
  const week = isoDate(firstDay);
  const note = readWeek(plan.log?.weeks, plan.season, week)?.note ?? '';
  const changed = (event: Event) =>
    send({ type: 'set-week-note', week, note: (event.target as HTMLTextAreaElement).value.trim() });
  return html`<textarea id="note" name="note" rows="2" placeholder=${say.notePlaceholder} .value=${live(note)} @change=${changed}></textarea>`;
}

function nextSentence({ context, state }: Closing): string {
  const reader = readingOf(context.view);
  const say = weekCloseWords(reader.language).next;
  const format = formatFor(reader);
  const changes = nextChanges(state.before, context);
  if (changes === undefined) return say.last;
  const [one, two] = changes.map((change): NextWords => ({ ...change, zone: isolated(change.zone) }));
  if (one === undefined) return say.same;
  if (two === undefined) return say.one(format, one);
  return changes.length === 2 ? say.two(format, one, two) : say.more(format, one, changes.length - 1);
}

function finish({ context, send, closed }: Closing): void {
  const edit = closingEdit(context);
  if (edit === undefined) closed();
  else send(edit, closed);
}
