import { html, nothing, type TemplateResult } from 'lit';
import { STATES, type State } from '../../engine/season/season.ts';
import { gridWords } from '../../language/en/grid.ts';
import { sheetWords } from '../../language/en/sheet.ts';
import { unitsWords } from '../../language/en/units.ts';
import type { SheetGrid } from '../../sheet/grid/sheet-grid.ts';
import type { SeasonSheet } from '../../sheet/season-sheet.ts';
import { MEASURES, type Measure, SORTS, type Sort } from '../../sheet/sheet-view.ts';

/** The controls above the sheet: what cells show, and which rows and weeks are looked at. */
export function toolsTemplate(
  sheet: SeasonSheet,
  grid: SheetGrid | undefined,
  onMeasure: (measure: Measure) => void,
): TemplateResult {
  const { view } = sheet;
  const words = gridWords(sheet.reader.language);
  const isAllOpen = sheet.state.season.zones.every(({ zone }) => view.open.has(zone.id));
  return html`<div class="runnel-grid__tools">
    ${measureTemplate(sheet, onMeasure)}
    <button @click=${() => sheet.setAllOpen(!isAllOpen)}>${isAllOpen ? words.foldAll : words.unfoldAll}</button>
    ${goToTemplate(sheet, grid)}
    ${findTemplate(sheet)}
    ${sheet.hidesSomething ? html`<button @click=${() => sheet.showAll()}>${hiddenWords(sheet)}</button>` : nothing}
  </div>`;
}

/** `Show 2 weeks and 1 zone hidden`: nobody else says that the sheet is not whole. */
function hiddenWords({ hidden: { weeks, zones }, format, reader }: SeasonSheet): string {
  const { showHidden } = gridWords(reader.language);
  if (zones === 0) return showHidden.weeks(format, weeks);
  return weeks === 0 ? showHidden.zones(format, zones) : showHidden.both(format, weeks, zones);
}

function measureTemplate({ view, reader }: SeasonSheet, onMeasure: (measure: Measure) => void): TemplateResult {
  const { measure: legend, measures } = gridWords(reader.language);
  const volume = unitsWords(reader.language).titles[reader.units === 'us' ? 'gal' : 'L'];
  const names = { ...measures, volume };
  return html`<fieldset class="runnel-grid__measures">
    <legend>${legend}</legend>
    ${MEASURES.map(
      (measure) => html`<label><input type="radio" name="runnel-measure" .checked=${view.measure === measure}
        @change=${() => onMeasure(measure)} /><span>${names[measure]}</span></label>`,
    )}
  </fieldset>`;
}

function goToTemplate({ calendar, thisWeek, reader }: SeasonSheet, grid: SheetGrid | undefined): TemplateResult {
  const words = gridWords(reader.language);
  const onChange = (event: Event) => {
    const choice = event.target as HTMLSelectElement;
    grid?.showWeek(Number(choice.value));
    choice.value = '';
  };
  return html`<select aria-label=${words.goTo} @change=${onChange}>
    <option value="" selected hidden>${words.goToWhere}</option>
    ${thisWeek === undefined ? nothing : html`<option value=${thisWeek}>${words.thisWeek}</option>`}
    ${calendar.months.map(({ label, week }) => html`<option value=${week}>${label}</option>`)}
  </select>`;
}

function findTemplate(sheet: SeasonSheet): TemplateResult {
  const { view, reader } = sheet;
  const words = gridWords(reader.language);
  const { states } = sheetWords(reader.language);
  const onFind = (event: Event) => sheet.show({ find: (event.target as HTMLInputElement).value });
  const onState = (event: Event) => {
    const { value } = event.target as HTMLSelectElement;
    sheet.show({ state: value === '' ? undefined : (value as State) });
  };
  const onSort = (event: Event) => sheet.show({ sort: (event.target as HTMLSelectElement).value as Sort });
  return html`<details class="runnel-grid__more">
    <summary>${words.more}</summary>
    <div>
      <input type="search" aria-label=${words.find} placeholder=${words.find} .value=${view.find} @input=${onFind} />
      <label>${words.state} <select @change=${onState}>
        <option value="" ?selected=${view.state === undefined}>${words.anyState}</option>
        ${STATES.map((state) => html`<option value=${state} ?selected=${view.state === state}>${states[state]}</option>`)}
      </select></label>
      <label>${words.sort} <select @change=${onSort}>
        ${SORTS.map((sort) => html`<option value=${sort} ?selected=${view.sort === sort}>${words.sorts[sort]}</option>`)}
      </select></label>
    </div>
  </details>`;
}
