/** What a folded planting shows: how large it is, what its lines give, what of it is assumed, and what is wrong with it. */
import { html, nothing, type TemplateResult } from 'lit';
import { gardenZonesWords } from '../../language/en/garden-zones.ts';
import type { PlanPlanting } from '../../plan/schema/plan-schema.ts';
import type { NoticeLine } from '../notices/notice-lines.ts';
import type { FormContext } from './form-context.ts';
import { mostFlowLph, plantingInGarden } from './planting-in-garden.ts';
import { sizeText } from './size-text.ts';

export function plantingSummary(planting: PlanPlanting, context: FormContext): TemplateResult {
  const { season, plan, reader, format, notices } = context;
  const say = gardenZonesWords(reader.language).plantingSummary;
  const found = plantingInGarden(season.garden, planting);
  const flowLpm = found === undefined ? 0 : mostFlowLph(found) / 60;
  const worst = notices?.(season, plan.name, reader)?.find(({ plantings }) => plantings.includes(planting.id));
  const assumed = (planting.assumed ?? []).map((part) => say.parts[part]);
  return html`<span class="quiet">${say.flows(format, sizeText(planting, reader), flowLpm)}
      ${assumed.length === 0 ? nothing : html`<i>${say.assumed(format, assumed)}</i>`}</span>
    ${worst === undefined ? nothing : html`<small class="wrong">${worstText(worst)}</small>`}`;
}

/** With its name where it is about others, too. */
function worstText({ plantings, text }: NoticeLine): string {
  const { name, sentence } = text();
  return plantings.length > 1 ? `${name}: ${sentence}` : sentence;
}
