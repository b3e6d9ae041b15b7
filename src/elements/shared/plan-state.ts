import { html, nothing, type TemplateResult } from 'lit';
import type { Season } from '../../engine/season/season.ts';
import { planElementWords } from '../../language/en/plan-element.ts';
import { languageFor } from '../../language/languages.ts';
import type { Reader } from '../../language/reader.ts';
import { readerFor } from '../../language/reader.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import type { PlanView } from '../../store/plan-view.ts';

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
  return html`<p class="waiting" role="status">${waitingWords(view)}</p>`;
}

function waitingWords({ status, season, locale }: PlanView): string {
  const words = planElementWords(languageFor(locale));
  if (season !== undefined) return words.noZones;
  return status === 'loading' || status === 'failed' ? words[status] : words.empty;
}
