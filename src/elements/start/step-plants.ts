/** Step 4: what grows, a row each that is quick to type. */
import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { dayNumber } from '../../engine/calendar.ts';
import { WATER_USE_CLASSES } from '../../engine/plants/water-use-classes.data.ts';
import { MIX_IDS } from '../../engine/soil/potting-mixes.data.ts';
import { toSi } from '../../engine/units.ts';
import type { ListedPlant } from '../../exchange/plants/plant-list.ts';
import { plantsWords } from '../../language/en/plants.ts';
import { sizesWords } from '../../language/en/sizes.ts';
import { startWords } from '../../language/en/start.ts';
import type { PlanPlanting, PlanZone } from '../../plan/schema/plan-schema.ts';
import { copyPlanting } from '../garden/create-and-copy.ts';
import { refusal } from '../garden/fields.ts';
import { needOfListed } from '../garden/listed-plant.ts';
import { plantNameOf } from '../garden/plant-name.ts';
import { sizeRefusal } from '../garden/size-refusal.ts';
import { sizeComesTo, sizeText } from '../garden/size-text.ts';
import { define } from '../shared/define.ts';
import { PlantSearch } from '../shared/plant-search.ts';
import { needText } from './need-text.ts';
import { plantSays } from './plant-says.ts';
import type { MakeStep, StartContext } from './start-context.ts';
import { assumedTag, caution, fold, stepHead } from './start-parts.ts';

export const makeStep: MakeStep = () => {
  define('runnel-plant-search', PlantSearch);
  return stepPlants;
};

function stepPlants(context: StartContext): TemplateResult {
  const { plan, reader } = context;
  const say = startWords(reader.language).plants;
  const rows = plan.zones.flatMap((zone) => zone.plantings.map((planting) => rowTemplate(context, zone, planting)));
  return html`${stepHead(say.title, say.lead)}
    ${rows.length === 0 ? html`<p class="quiet">${say.none}</p>` : html`<ul class="rows" aria-label=${say.list}>${rows}</ul>`}
    ${typingTemplate(context)}`;
}

function rowTemplate(context: StartContext, zone: PlanZone, planting: PlanPlanting): TemplateResult {
  const { plan, reader, form, row, host } = context;
  const say = startWords(reader.language).plants;
  const at = { zone: zone.id, planting: planting.id };
  const change = () => {
    row.begin(zone, planting, sizeText(planting, reader), plantNameOf(planting.need, reader));
    host.requestUpdate();
    void focusRow(context);
  };
  const copy = () =>
    form.send('rows', '', { type: 'add-planting', zone: zone.id, planting: copyPlanting(plan, planting) });
  return html`<li>
    <b>${planting.name}</b>
    <span>${sizeText(planting, reader)}</span>
    <span class="quiet">${needText(planting.need, reader)}${plantedText(planting, context)} ${assumedTag(context, planting.assumed?.some((part) => part === 'need' || part === 'plantedOn') === true)}</span>
    ${plan.zones.length > 1 ? html`<span class="quiet">${zone.name}</span>` : nothing}
    <span class="does">
      <button class="plain" aria-label=${say.change(planting.name)} @click=${change}>${say.changeShort}</button>
      <button class="plain" aria-label=${say.copy(planting.name)} @click=${copy}>${say.copyShort}</button>
      <button class="plain" aria-label=${say.remove(planting.name)} @click=${() => form.send('rows', '', { type: 'remove-planting', ...at })}>${say.removeShort}</button>
    </span>
  </li>`;
}

/** Of a crop: its water goes by the day on which it was planted. */
function plantedText({ need }: PlanPlanting, { reader, format }: StartContext): string {
  if (need.kind !== 'crop') return '';
  return `, ${startWords(reader.language).plants.plantedFrom(format, dayNumber(need.plantedOn))}`;
}

async function focusRow({ host }: StartContext): Promise<void> {
  await host.updateComplete;
  host.renderRoot.querySelector<HTMLInputElement>('input[name=row-name]')?.focus();
}

function typingTemplate(context: StartContext): TemplateResult {
  const { plan, reader, row, host } = context;
  const say = startWords(reader.language).plants;
  const size = sizesWords(reader.language);
  const changed = (change: (text: string) => void) => (event: Event) => {
    change((event.target as HTMLInputElement).value);
    host.requestUpdate();
  };
  const chosen = (plant: ListedPlant, name: string) => {
    row.plant = name;
    row.listed = plant;
    row.need = needOfListed(plant, name, { plantedOn: plan.season.firstDay, before: undefined });
    host.requestUpdate();
  };
  const typing = (text: string) => {
    row.typePlant(text);
    host.requestUpdate();
  };
  const isEditing = row.editing !== undefined;
  return html`<form class="typing" @submit=${(event: Event) => submit(context, event)} @change=${() => host.tellStep()} @focusout=${() => host.tellStep()}>
    <div class="field"><label><span class="label">${say.name.label}</span>
      <input name="row-name" ?data-runnel-kept=${host.isKept} autocomplete="off" .value=${live(row.name)} @input=${changed(
        (text) => {
          row.name = text;
        },
      )} /></label></div>
    <runnel-plant-search .value=${live(row.plant)} .hasHelp=${false} .chosen=${chosen} .typing=${typing}></runnel-plant-search>
    <div class="field"><label><span class="label">${size.field.label}</span>
      <input name="row-size" ?data-runnel-kept=${host.isKept} autocomplete="off" aria-describedby="row-size-says" aria-invalid=${row.refused === undefined ? nothing : 'true'}
        .value=${live(row.size)} @input=${changed((text) => {
          row.size = text;
          row.refused = undefined;
        })} /></label>
      <div id="row-size-says">
        <p class="refused" role="alert" ?hidden=${row.refused === undefined}>${sizeRefusal(row.size, reader)}</p>
        <p class="help">${size.field.examples[plan.units]}</p>
      </div></div>
    ${classField(context)}
    ${plan.zones.length > 1 ? zoneField(context) : nothing}
    <div class="actions"><button class="main" name="add-row">${isEditing ? say.save : say.add}</button>
      ${
        isEditing
          ? html`<button type="button" name="cancel-row" @click=${() => {
              row.clear();
              host.requestUpdate();
            }}>${say.cancel}</button>`
          : nothing
      }</div>
    <div class="wide">
      ${refusal('rows', context)}
      <div role="status">${row.isKeptInPart ? html`<p class="refused">${say.keptInPart}</p>` : nothing}</div>
      <p class="help">${plantSays(context)}</p>
      <p class="help">${sizeSays(context)}</p>
    </div>
    ${containerFields(context)}
    <div class="wide">${fold(
      context,
      'row-more',
      say.planted,
      plantedSays(context),
      () => html`<div class="field"><label><span class="label">${say.from.label}</span>
      <input type="date" name="row-from" ?data-runnel-kept=${host.isKept} .value=${live(row.from)} @change=${changed(
        (text) => {
          row.from = text;
        },
      )} /></label><p class="help">${say.from.help}</p></div>`,
    )}</div>
  </form>`;
}

/** What holds while no day is typed. */
function plantedSays({ plan, reader, format, row }: StartContext): string {
  const say = startWords(reader.language);
  const before = row.editing?.before.need;
  const own = before !== undefined && before === row.need && before.kind === 'crop' ? before.plantedOn : undefined;
  const from = say.plants.plantedFrom(format, dayNumber(row.from || own || plan.season.firstDay));
  return row.from === '' && own === undefined ? `${from}, ${say.assumed}` : from;
}

/** What the size that is typed comes to. */
function sizeSays({ plan, reader, format, row }: StartContext): string {
  const size = row.sizeRead(reader);
  if (size === undefined) return '';
  const say = startWords(reader.language).plants;
  const { extent, by } = size;
  if (by === 'volume' && extent.kind === 'canopy')
    return say.container.across(format, toSi(extent.diameter, 'diameter', plan.units));
  const comesTo = sizeComesTo(size, reader);
  return size.isSpreadListed === true ? `${comesTo} ${say.spreadListed}` : comesTo;
}

/** Pots and baskets dry out by what they hold, and by whether rain reaches them. */
function containerFields(context: StartContext): TemplateResult | typeof nothing {
  const { reader, row, host } = context;
  const size = row.sizeRead(reader);
  if (size?.container === undefined) return nothing;
  const say = startWords(reader.language).plants.container;
  const mixed = (event: Event) => {
    const chosen = MIX_IDS.find((id) => id === (event.target as HTMLSelectElement).value);
    if (chosen !== undefined) row.mix = chosen;
    host.requestUpdate();
  };
  const roofed = (event: Event) => {
    row.isUnderRoof = (event.target as HTMLInputElement).checked;
    host.requestUpdate();
  };
  return html`<div class="wide">
    <div class="field"><label><span class="label">${say.mix.label}</span>
      <select name="row-mix" @change=${mixed}>${MIX_IDS.map((id) => html`<option value=${id} ?selected=${id === row.mix}>${say.mix.options[id]}</option>`)}</select></label></div>
    <label class="check"><input type="checkbox" name="row-roof" .checked=${live(row.isUnderRoof)} @change=${roofed} /> ${say.roof.label}</label>
    ${size.isBasket === true ? caution(context, 'backflow') : nothing}</div>`;
}

function submit(context: StartContext, event: Event): void {
  event.preventDefault();
  const { plan, reader, row, form, host } = context;
  const edit = row.edit(plan, reader, startWords(reader.language).plan);
  host.requestUpdate();
  if (edit === undefined) {
    host.renderRoot.querySelector<HTMLInputElement>('input[name=row-size]')?.focus();
    return;
  }
  form.send('rows', '', edit, () => {
    row.clear();
    host.requestUpdate();
    void focusRow(context);
  });
}

function classField({ reader, row, host }: StartContext): TemplateResult {
  const say = startWords(reader.language).plants;
  const { classes } = plantsWords(reader.language);
  if (row.need?.kind === 'crop')
    return html`<div class="field"><span class="label">${say.class.label}</span><span class="told">${needText(row.need, reader)}</span></div>`;
  const value = row.classId ?? 'moderate';
  const choose = (event: Event) => {
    const chosen = WATER_USE_CLASSES.find(({ id }) => id === (event.target as HTMLSelectElement).value);
    if (chosen !== undefined) row.chooseClass(chosen.id);
    host.requestUpdate();
  };
  return html`<div class=${row.need === undefined ? 'field is-assumed' : 'field'}><label><span class="label">${say.class.label}</span>
    <select name="row-class" .value=${live(value)} @change=${choose}>${WATER_USE_CLASSES.map(({ id }) => html`<option value=${id} ?selected=${id === value}>${classes[id]}</option>`)}</select></label></div>`;
}

function zoneField({ plan, reader, row, host }: StartContext): TemplateResult {
  const say = startWords(reader.language).plants;
  const value = row.zone ?? plan.zones[0]?.id ?? '';
  const choose = (event: Event) => {
    row.zone = (event.target as HTMLSelectElement).value;
    host.requestUpdate();
  };
  return html`<div class="field"><label><span class="label">${say.zone.label}</span>
    <select name="row-zone" .value=${live(value)} @change=${choose}>${plan.zones.map(({ id, name }) => html`<option value=${id} ?selected=${id === value}>${name}</option>`)}</select></label></div>`;
}
