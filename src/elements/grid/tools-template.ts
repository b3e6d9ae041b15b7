import { html, nothing, type TemplateResult } from 'lit';
import { STATES, type State } from '../../engine/season/season.ts';
import type { OwnGrid } from '../../sheet/grid/own-grid.ts';
import type { SeasonSheet } from '../../sheet/season-sheet.ts';
import { MEASURES, type Measure, SORTS, type Sort } from '../../sheet/sheet-view.ts';
import { SORT_NAMES, STATE_NAMES } from '../../sheet/words.ts';
import { gridWords } from '../shared/words/grid-words.ts';

/** The controls above the sheet: what cells show, and which rows and weeks are looked at. */
export function toolsTemplate(
  sheet: SeasonSheet,
  grid: OwnGrid | undefined,
  onMeasure: (measure: Measure) => void,
): TemplateResult {
  const { view } = sheet;
  const isAllOpen = sheet.state.season.zones.every(({ zone }) => view.open.has(zone.id));
  return html`<div class="runnel-grid__tools">
    ${measureTemplate(sheet, onMeasure)}
    <button @click=${() => sheet.setAllOpen(!isAllOpen)}>${isAllOpen ? gridWords.foldAll : gridWords.unfoldAll}</button>
    ${goToTemplate(sheet, grid)}
    ${findTemplate(sheet)}
    ${sheet.hidesSomething ? html`<button @click=${() => sheet.showAll()}>${hiddenWords(sheet)}</button>` : nothing}
  </div>`;
}

/** `Show 2 weeks and 1 zone hidden`: nobody else says that the sheet is not whole. */
function hiddenWords({ hidden: { weeks, zones } }: SeasonSheet): string {
  return gridWords.showHidden([
    ...(weeks > 0 ? [gridWords.hiddenWeeks(weeks)] : []),
    ...(zones > 0 ? [gridWords.hiddenZones(zones)] : []),
  ]);
}

function measureTemplate({ view, format }: SeasonSheet, onMeasure: (measure: Measure) => void): TemplateResult {
  const names = gridWords.measures(format.units === 'us' ? gridWords.gallons : gridWords.litres);
  return html`<fieldset class="runnel-grid__measures">
    <legend>${gridWords.measure}</legend>
    ${MEASURES.map(
      (measure) => html`<label><input type="radio" name="runnel-measure" .checked=${view.measure === measure}
        @change=${() => onMeasure(measure)} /><span>${names[measure]}</span></label>`,
    )}
  </fieldset>`;
}

function goToTemplate({ calendar, thisWeek }: SeasonSheet, grid: OwnGrid | undefined): TemplateResult {
  const onChange = (event: Event) => {
    const choice = event.target as HTMLSelectElement;
    grid?.showWeek(Number(choice.value));
    choice.value = '';
  };
  return html`<select aria-label=${gridWords.goTo} @change=${onChange}>
    <option value="" selected hidden>${gridWords.goToWhere}</option>
    ${thisWeek === undefined ? nothing : html`<option value=${thisWeek}>${gridWords.thisWeek}</option>`}
    ${calendar.months.map(({ label, week }) => html`<option value=${week}>${label}</option>`)}
  </select>`;
}

function findTemplate(sheet: SeasonSheet): TemplateResult {
  const { view } = sheet;
  const onFind = (event: Event) => sheet.show({ find: (event.target as HTMLInputElement).value });
  const onState = (event: Event) => {
    const { value } = event.target as HTMLSelectElement;
    sheet.show({ state: value === '' ? undefined : (value as State) });
  };
  const onSort = (event: Event) => sheet.show({ sort: (event.target as HTMLSelectElement).value as Sort });
  return html`<details class="runnel-grid__more">
    <summary>${gridWords.more}</summary>
    <div>
      <input type="search" aria-label=${gridWords.find} placeholder=${gridWords.find} .value=${view.find} @input=${onFind} />
      <label>${gridWords.state} <select @change=${onState}>
        <option value="" ?selected=${view.state === undefined}>${gridWords.anyState}</option>
        ${STATES.map((state) => html`<option value=${state} ?selected=${view.state === state}>${STATE_NAMES[state]}</option>`)}
      </select></label>
      <label>${gridWords.sort} <select @change=${onSort}>
        ${SORTS.map((sort) => html`<option value=${sort} ?selected=${view.sort === sort}>${SORT_NAMES[sort]}</option>`)}
      </select></label>
    </div>
  </details>`;
}
