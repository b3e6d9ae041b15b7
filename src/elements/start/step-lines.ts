/** Step 5: how each planting gets its water, one at a time. */
import { html, nothing, type TemplateResult } from 'lit';
import { startWords } from '../../language/en/start.ts';
import { removedAt } from '../../plan/edits/change.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan, PlanLine, PlanPlanting } from '../../plan/schema/plan-schema.ts';
import { LINE_WAYS, type LineWay, linesFor, rowsIn, wayOf } from '../../plan/usual-lines.ts';
import { addNextLine } from '../garden/create-and-copy.ts';
import { checkField } from '../garden/fields.ts';
import { plantingInGarden } from '../garden/planting-in-garden.ts';
import { sizeText } from '../garden/size-text.ts';
import { bedDrawing } from './bed-drawing.ts';
import type { Drawing } from './drawings.data.ts';
import { lineFields, moreLineFields, type PlantingInZone } from './line-fields.ts';
import type { MakeStep, StartContext } from './start-context.ts';
import { assumedTag, cards, caution, fold, stepHead } from './start-parts.ts';

const DRAWN: Readonly<Record<LineWay, Drawing | undefined>> = {
  rows: 'rows',
  loops: 'loops',
  points: 'points',
  spray: 'spray',
  solid: 'solid',
  none: 'none',
};

export const makeStep: MakeStep = () => stepLines;

function stepLines(context: StartContext): TemplateResult {
  const { plan, reader, laying } = context;
  const say = startWords(reader.language).lines;
  const all = plan.zones.flatMap((zone) => zone.plantings.map((planting): PlantingInZone => ({ zone, planting })));
  const shown = all.find(({ planting }) => planting.id === laying.planting) ?? all[0];
  return html`${stepHead(say.title, say.lead)}
    ${shown === undefined ? html`<p class="quiet">${say.noPlants}</p>` : html`${chips(context, all, shown)}${layTemplate(context, shown)}`}`;
}

function chips(
  { reader, laying, host, form }: StartContext,
  all: readonly PlantingInZone[],
  shown: PlantingInZone,
): TemplateResult {
  const say = startWords(reader.language);
  const show = (id: string) => {
    laying.planting = id;
    laying.line = 0;
    form.forget('laid-');
    host.requestUpdate();
  };
  return html`<div class="chips" role="group" aria-label=${say.lines.plantings}>${all.map(
    ({
      planting,
    }) => html`<button class=${planting.assumed?.includes('lines') ? 'chip is-assumed' : 'chip'} aria-pressed=${planting === shown.planting ? 'true' : 'false'} @click=${() => show(planting.id)}>
      ${planting.name} <small>${say.assumed}</small></button>`,
  )}</div>`;
}

function layTemplate(context: StartContext, laid: PlantingInZone): TemplateResult {
  const { plan, reader, form, laying } = context;
  const { zone, planting } = laid;
  const say = startWords(reader.language).lines;
  const at = { zone: zone.id, planting: planting.id };
  const index = Math.min(laying.line, Math.max(0, planting.lines.length - 1));
  const line = planting.lines[index];
  const isAssumedLine = planting.assumed?.includes('lines') === true;
  const choose = (way: LineWay) => {
    const [next] = linesFor(way, planting.extent, plan.units, line);
    form.send('laid-way', '', replaceLines(laid, withLine(planting.lines, index, next)));
  };
  return html`<p class="told">${planting.name}: ${sizeText(planting, reader)} ${assumedTag(context, planting.assumed?.includes('extent') === true)}</p>
    ${cards(context, {
      key: `laid-way-${planting.id}-${index}`,
      legend: say.way,
      value: wayOf(line === undefined ? [] : [line]),
      assumed: isAssumedLine,
      options: LINE_WAYS.map((value) => ({ value, ...say.ways[value], drawing: DRAWN[value] })),
      choose,
    })}
    ${lineTabs(context, laid, index)}
    ${line === undefined ? nothing : html`<div class=${isAssumedLine ? 'is-assumed' : ''}>${lineFields(context, laid, index, line)}</div>`}
    ${line !== undefined && isWorkedOut(line, planting, plan) ? html`<p class="help">${say.workedOut}</p>` : nothing}
    ${line?.kind === 'dripline' && line.layout.kind === 'loops' ? html`<p class="help">${say.young}</p>` : nothing}
    ${bedDrawing(context, planting, index)}
    <p class="result">${makes(context, planting)}</p>
    ${fold(
      context,
      'lines-more',
      say.more,
      say.moreSays,
      () => html`${checkField({ key: 'laid-shut-off', words: say.shutOff, value: planting.shutOff ?? false, edit: (shutOff) => ({ type: 'change-planting', ...at, change: { shutOff: shutOff || undefined } }) }, context)}
        ${planting.shutOff || climbs(line) ? caution(context, 'backflow') : nothing}
        ${line === undefined ? nothing : moreLineFields(context, laid, index, line)}`,
    )}`;
}

/** Whether its rows are as many, and as long, as its planting's size takes. */
function isWorkedOut(line: PlanLine, { extent }: PlanPlanting, { units }: Plan): boolean {
  if (line.kind !== 'dripline' || line.layout.kind !== 'rows') return false;
  const { rows, length } = rowsIn(extent, units);
  return line.layout.rows === rows && line.layout.length === length;
}

const climbs = (line: PlanLine | undefined): boolean => (line?.risePercent ?? 0) > 0;

/** Other lines for the planting; they are not assumed any more. */
function replaceLines({ zone, planting }: PlantingInZone, lines: readonly PlanLine[]): Edit {
  return { type: 'change-planting', zone: zone.id, planting: planting.id, change: { lines } };
}

function withLine(lines: readonly PlanLine[], index: number, line: PlanLine | undefined): readonly PlanLine[] {
  if (line === undefined) return removedAt(lines, index);
  return lines.length === 0 ? [line] : lines.with(index, line);
}

/** Several lines beside one another: which of them is looked at. */
function lineTabs(context: StartContext, laid: PlantingInZone, shown: number): TemplateResult | typeof nothing {
  const { plan, reader, format, form, laying, host } = context;
  const { planting } = laid;
  const say = startWords(reader.language).lines;
  if (planting.lines.length === 0) return nothing;
  const show = (index: number) => {
    laying.line = index;
    form.forget('laid-');
    host.requestUpdate();
  };
  const add = () =>
    form.send('laid-lines', '', addNextLine(plan, laid.zone.id, planting), () => show(planting.lines.length));
  const remove = () =>
    form.send('laid-lines', '', replaceLines(laid, withLine(planting.lines, shown, undefined)), () => show(0));
  return html`<div class="chips">
    ${planting.lines.length < 2 ? nothing : planting.lines.map((_, index) => html`<button class="chip" aria-pressed=${index === shown ? 'true' : 'false'} @click=${() => show(index)}>${say.line(format, index + 1)}</button>`)}
    <button class="plain" name="add-line" @click=${add}>${say.second}</button>
    ${planting.lines.length < 2 ? nothing : html`<button class="plain" name="remove-line" @click=${remove}>${say.removeLine}</button>`}
  </div>`;
}

/** Emitters and flow of what lies there, as the engine has counted them. */
function makes({ season, reader, format }: StartContext, laid: PlanPlanting): string {
  const say = startWords(reader.language).lines;
  const planting = plantingInGarden(season.garden, laid);
  const emitters = planting?.lines.reduce((sum, line) => sum + line.emitters, 0) ?? 0;
  const flowLph = planting?.lines.reduce((sum, line) => sum + line.emitters * line.emitterFlowLph, 0) ?? 0;
  const lengthM = planting?.lines.reduce((sum, line) => sum + (line.lengthM ?? 0), 0) ?? 0;
  if (emitters === 0) return say.makesNothing;
  const made = say.makes(format, emitters, flowLph / 60);
  return lengthM === 0 ? made : say.ofLine(format, lengthM, made);
}
