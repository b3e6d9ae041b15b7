/** How to begin: a new plan, a file, the demo garden, or a garden like one's own. */
import { html, nothing, type TemplateResult } from 'lit';
import { dayNumber } from '../../engine/calendar.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { startWords } from '../../language/en/start.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import type { Reader } from '../../language/reader.ts';
import { newPlan } from '../../plan/new-plan.ts';
import { writePlan } from '../../plan/reading/write-plan.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { RunnelOpenEvent } from '../shared/events/open-event.ts';
import { RunnelStartDoneEvent } from '../shared/events/start-done-event.ts';
import { fetchPart } from '../shared/fetch-part.ts';
import { fileButton } from '../shared/file-button.ts';
import { PLAN_FILES, savePlan } from '../shared/save-plan.ts';
import { todayOf } from '../shared/today-here.ts';
import type { StartHost } from './start-context.ts';
import { stepToGoOn } from './start-steps.ts';
import type { TemplateId } from './templates.ts';

export interface BeginContext {
  readonly host: StartHost;
  readonly plan: Plan | undefined;
  readonly reader: Reader;
  readonly readOnly: boolean;
}

const TEMPLATES: readonly TemplateId[] = ['vegetables', 'border', 'porch', 'club'];

export function beginTemplate(context: BeginContext): TemplateResult {
  const { host, plan, reader, readOnly } = context;
  const say = startWords(reader.language);
  const { begin } = say;
  const begun = (made: Plan) => {
    open(host, new Blob([writePlan(made)], { type: 'application/json' }));
    host.step = 'where';
  };
  const opened = (file: Blob) => {
    open(host, file);
    host.dispatchEvent(new RunnelStartDoneEvent('season'));
  };
  const template = async (id: TemplateId) => {
    const part = await fetchPart(() => import('./templates.ts'));
    if (part !== undefined)
      begun(part.templatePlan(id, { ...beginOptions(context), name: say.templates[id].name }, reader.language));
  };
  const example = async (address: string) => {
    const answer = await fetch(new URL(address, document.baseURI));
    if (answer.ok) opened(await answer.blob());
  };
  const { example: address } = host;
  return html`<h2 part="title" id="step-title" tabindex="-1">${begin.title}</h2><p class="lead">${begin.lead}</p>
    ${
      plan === undefined
        ? nothing
        : html`<div class="entry"><button name="resume" class="main" @click=${() => {
            host.step = host.leftStep ?? stepToGoOn(plan);
          }}>${begin.resume}</button><p>${begin.resumeSays(isolated(plan.name))}</p></div>
          <p class="caution">${begin.replaces(isolated(plan.name))} <button class="plain" @click=${() => savePlan(plan)}>${begin.save}</button></p>`
    }
    <div class="entries">
      <div class="entry"><button name="new-plan" class=${plan === undefined ? 'main' : ''} ?disabled=${readOnly} @click=${() => begun(newPlan(beginOptions(context)))}>${begin.newPlan}</button><p>${begin.newPlanSays}</p></div>
      <div class="entry"><span>${fileButton({ words: begin.open, accept: PLAN_FILES, onFile: opened })}</span><p>${begin.openSays}</p></div>
      ${address === undefined ? nothing : html`<div class="entry"><button name="example" @click=${() => void example(address)}>${begin.example}</button><p>${begin.exampleSays}</p></div>`}
    </div>
    <h3>${begin.templates}</h3><p class="quiet">${begin.templatesSay}</p>
    <div class="entries">${TEMPLATES.map(
      (id) =>
        html`<div class="entry"><button name=${`template-${id}`} ?disabled=${readOnly} @click=${() => void template(id)}>${say.templates[id].name}</button><p>${say.templates[id].says}</p></div>`,
    )}</div>`;
}

const open = (host: StartHost, file: Blob): void => {
  host.dispatchEvent(new RunnelOpenEvent(file));
};

/** The units of whoever reads, until a place says otherwise. */
function beginOptions({ host, reader }: BeginContext) {
  const say = startWords(reader.language);
  const region = new Intl.Locale(reader.locale).maximize().region;
  const units: UnitSystem = region === 'US' ? 'us' : 'metric';
  return {
    units,
    today: dayNumber(todayOf(host.today)),
    name: say.plan,
    zone: say.zone(formatFor(reader), 1),
    source: say.sources.bib,
  };
}
