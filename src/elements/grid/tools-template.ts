import { html, nothing, type TemplateResult } from 'lit';
import { STATES, type State } from '../../engine/season/season.ts';
import { gridToolsWords } from '../../language/en/grid-tools.ts';
import { sheetWords } from '../../language/en/sheet.ts';
import { unitsWords } from '../../language/en/units.ts';
import type { SheetGrid } from '../../sheet/grid/sheet-grid.ts';
import type { SeasonSheet } from '../../sheet/season-sheet.ts';
import { MEASURES, type Measure, type SheetView, SORTS, type Sort, WEEKS_AT_ONCE } from '../../sheet/sheet-view.ts';

export interface ToolsSetting {
  readonly onMeasure: (measure: Measure) => void;
  /** Selects the cell of another week. */
  readonly onWeek: (week: number) => void;
  /** Whether a strip goes to weeks. */
  readonly isBeside: boolean;
}

/** The controls above the sheet: what cells show, and which rows and weeks are looked at; beside a strip its frame goes to weeks. */
export function toolsTemplate(
  sheet: SeasonSheet,
  grid: SheetGrid | undefined,
  { onMeasure, onWeek, isBeside }: ToolsSetting,
): TemplateResult {
  const { view } = sheet;
  const words = gridToolsWords(sheet.reader.language);
  const isNarrow = grid?.isNarrow === true;
  const isAllOpen = sheet.state.season.zones.every(({ zone }) => view.open.has(zone.id));
  const unfold = html`<button @click=${() => sheet.setAllOpen(!isAllOpen)}>${isAllOpen ? words.foldAll : words.unfoldAll}</button>`;
  const measures = measureTemplate(sheet, onMeasure);
  return html`<div class="runnel-grid__tools">
    ${sheet.hidesSomething ? html`<button @click=${() => sheet.showAll()}>${hiddenWords(sheet)}</button>` : nothing}
    ${isBeside ? nothing : goToTemplate(sheet, grid, onWeek)}
    <button aria-haspopup="menu" ?disabled=${grid === undefined} @click=${() => grid?.openMenu()}>${words.cellMenu}</button>
    ${isNarrow ? atOnceTemplate(sheet, (change) => sheet.show(change)) : nothing}
    ${findTemplate(sheet, isNarrow ? html`${unfold}${measures}` : nothing)}
    ${isNarrow ? nothing : html`${unfold}${measures}`}
  </div>`;
}

/** `Show 2 weeks and 1 zone hidden`: nobody else says that the sheet is not whole. */
function hiddenWords({ hidden: { weeks, zones }, format, reader }: SeasonSheet): string {
  const { showHidden } = gridToolsWords(reader.language);
  if (zones === 0) return showHidden.weeks(format, weeks);
  return weeks === 0 ? showHidden.zones(format, zones) : showHidden.both(format, weeks, zones);
}

function measureTemplate({ view, reader }: SeasonSheet, onMeasure: (measure: Measure) => void): TemplateResult {
  const { measure: legend, measures } = gridToolsWords(reader.language);
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

/** On a phone: one week, large, or as many as there is room for. */
function atOnceTemplate(
  { view, format, reader }: SeasonSheet,
  show: (change: Partial<SheetView>) => void,
): TemplateResult {
  const { atOnce, weeksAtOnce } = gridToolsWords(reader.language);
  return html`<fieldset class="runnel-grid__measures">
    <legend>${atOnce}</legend>
    ${WEEKS_AT_ONCE.map(
      (weeks) => html`<label><input type="radio" name="runnel-weeks" .checked=${view.weeksAtOnce === weeks}
        @change=${() => show({ weeksAtOnce: weeks })} /><span>${weeksAtOnce(format, weeks)}</span></label>`,
    )}
  </fieldset>`;
}

function goToTemplate(
  { calendar, thisWeek, reader }: SeasonSheet,
  grid: SheetGrid | undefined,
  onWeek: (week: number) => void,
): TemplateResult {
  const words = gridToolsWords(reader.language);
  const onChange = (event: Event) => {
    const choice = event.target as HTMLSelectElement;
    const week = Number(choice.value);
    // What is selected goes along.
    if (week === thisWeek) onWeek(week);
    grid?.showWeek(week);
    choice.value = '';
  };
  return html`<select aria-label=${words.goTo} @change=${onChange}>
    <option value="" selected hidden>${words.goToWhere}</option>
    ${thisWeek === undefined ? nothing : html`<option value=${thisWeek}>${words.thisWeek}</option>`}
    ${calendar.months.map(({ label, week }) => html`<option value=${week}>${label}</option>`)}
  </select>`;
}

/** `besides`: what else is folded in with it. */
function findTemplate(sheet: SeasonSheet, besides: unknown): TemplateResult {
  const { view, reader } = sheet;
  const words = gridToolsWords(reader.language);
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
      ${besides}
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
