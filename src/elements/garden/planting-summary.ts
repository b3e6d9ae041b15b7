/** What a folded planting shows: how large it is, what its lines give, what of it is assumed, and what is wrong with it. */
import { html, nothing, type TemplateResult } from 'lit';
import { gardenZonesWords } from '../../language/en/garden-zones.ts';
import { isolated } from '../../language/format/isolated.ts';
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
  const lines = notices?.(season, plan.name, reader) ?? [];
  const worst = worstOf(planting.id, lines);
  const assumed = (planting.assumed ?? []).map((part) => say.parts[part]);
  return html`<span class="quiet">${say.flows(format, sizeText(planting, reader), flowLpm)}
      ${assumed.length === 0 ? nothing : html`<i>${say.assumed(format, assumed)}</i>`}</span>
    ${worst === undefined ? nothing : html`<small class="wrong">${worstText(worst, planting, lines, context)}</small>`}`;
}

/** Worst first, as they are found. */
const worstOf = (id: string, lines: readonly NoticeLine[]): NoticeLine | undefined =>
  lines.find(({ plantings }) => plantings.includes(id));

/** What is about several plantings of a zone stands in full at the first of those of which nothing is worse, with their names. */
function worstText(
  worst: NoticeLine,
  { id }: PlanPlanting,
  lines: readonly NoticeLine[],
  { plan, reader }: FormContext,
): string {
  const { plantings, text } = worst;
  if (plantings.length === 1) return text().sentence;
  const first = plantings.find((each) => worstOf(each, lines) === worst);
  if (first === id || first === undefined) return `${text().name}: ${text().sentence}`;
  const shownAt = plan.zones.flatMap((zone) => zone.plantings).find((planting) => planting.id === first);
  return gardenZonesWords(reader.language).plantingSummary.asAt(isolated(shownAt?.name ?? first));
}
