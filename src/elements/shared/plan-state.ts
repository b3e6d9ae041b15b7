import { html, nothing, type TemplateResult } from 'lit';
import type { Season } from '../../engine/season/season.ts';
import { planElementWords } from '../../language/en/plan-element.ts';
import { languageFor } from '../../language/languages.ts';
import type { Reader } from '../../language/reader.ts';
import { readerFor } from '../../language/reader.ts';
import type { Fault } from '../../plan/reading/fault.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import type { PlanView } from '../../store/plan-view.ts';
import { markupAround } from './outside-plan.ts';

/** A view with something to show. */
export type ReadyView = PlanView & { readonly plan: Plan; readonly season: Season };

/** Whether there is a season to show; a plan on screen stays while another file is read or refused. */
export function isReady(view: PlanView): view is ReadyView {
  return view.plan !== undefined && view.season !== undefined && view.season.zones.length > 0;
}

/** The units and language that a view's figures are written in; US units where there is no plan. */
export function readingOf({ locale, plan }: PlanView): Reader {
  return readerFor(locale, plan?.units ?? 'us');
}

/** What stands in a view's place while there is nothing to show; it says the next step. */
export function waitingTemplate(view: PlanView): TemplateResult | typeof nothing {
  if (isReady(view)) return nothing;
  const markup = markupAround(view);
  return html`<p class="waiting" role="status">${markup === undefined ? waitingWords(view) : outsideWords(view, markup)}</p>`;
}

function outsideWords({ locale }: PlanView, markup: string): TemplateResult {
  return html`${planElementWords(languageFor(locale)).outside} <code>${markup}</code>`;
}

function waitingWords({ status, season, faults, locale }: PlanView): string {
  const words = planElementWords(languageFor(locale));
  if (season !== undefined) return words.noZones;
  if (status === 'failed') return failedWords(faults, words);
  return status === 'loading' ? words.loading : words.empty;
}

/** Of a file that did not come, its address: nothing else on the page may say it. */
function failedWords([fault]: readonly Fault[], words: ReturnType<typeof planElementWords>): string {
  if (fault?.code !== 'file-refused' && fault?.code !== 'file-unreachable') return words.failed;
  const { found } = fault.values;
  return words.notThere([found, 'status' in fault.values ? [fault.values.status] : []].flat().join(', '));
}
