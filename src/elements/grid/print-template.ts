import { html, type TemplateResult } from 'lit';
import { gridToolsWords } from '../../language/en/grid-tools.ts';
import { sheetWords } from '../../language/en/sheet.ts';
import type { SeasonSheet } from '../../sheet/season-sheet.ts';
import { NAME_COLUMN, SEASON_COLUMN, type SheetColumn } from '../../sheet/sheet-cell.ts';
import type { SheetRow } from '../../sheet/sheet-row.ts';
import { cautionsOf, cautionsTemplate } from '../shared/cautions-template.ts';

/** States that somebody has to act on or to know of: a letter stands for them on paper, where no sign is drawn. */
const PAPER_STATES = ['dry', 'short', 'over', 'closed'] as const;

/** Weeks that stand side by side on a sheet of paper. */
const WEEKS_ACROSS = 10;

/** The season on paper: what the sheet shows, in tables that a page can hold, since the grid draws only what is in view. */
export function printTemplate(sheet: SeasonSheet): TemplateResult {
  const shown = Array.from({ length: sheet.weeks }, (_, week) => week).filter(
    (week) => !sheet.view.hiddenWeeks.has(week),
  );
  const tables = Array.from({ length: Math.ceil(shown.length / WEEKS_ACROSS) }, (_, at) => {
    const columns = shown
      .slice(at * WEEKS_ACROSS, (at + 1) * WEEKS_ACROSS)
      .map((week): SheetColumn => ({ kind: 'week', week }));
    return tableTemplate(sheet, at === 0 ? [SEASON_COLUMN, ...columns] : columns);
  });
  const hasTank = sheet.state.season.garden.supply.tank !== undefined;
  return html`<div class="runnel-grid__print">${tables}<p>${legend(sheet)}</p>${cautionsTemplate(cautionsOf(hasTank), sheet.reader.language)}</div>`;
}

function legend({ reader: { language } }: SeasonSheet): string {
  const { letters, letterOf, legend: say } = gridToolsWords(language).paper;
  const { states } = sheetWords(language);
  return say(PAPER_STATES.map((state) => letterOf(letters[state], states[state].toLocaleLowerCase(language.locale))));
}

function tableTemplate(sheet: SeasonSheet, columns: readonly SheetColumn[]): TemplateResult {
  return html`<table>
    <thead><tr><th scope="col">${gridToolsWords(sheet.reader.language).paper.zone}</th>${columns.map((column) => html`<th scope="col">${headOf(sheet, column)}</th>`)}</tr></thead>
    <tbody>${sheet.rows.map((row) => rowTemplate(sheet, row, columns))}</tbody>
  </table>`;
}

function headOf({ calendar, reader }: SeasonSheet, column: SheetColumn): string {
  return column.kind === 'week' ? calendar.weekOf(column.week) : gridToolsWords(reader.language).paper.wholeSeason;
}

function rowTemplate(sheet: SeasonSheet, row: SheetRow, columns: readonly SheetColumn[]): TemplateResult {
  const head = sheet.describe({ row, column: NAME_COLUMN });
  return html`<tr class=${`runnel-print-${row.kind}`}><th scope="row">${head}</th>${columns.map((column) => cellTemplate(sheet, row, column))}</tr>`;
}

function cellTemplate(sheet: SeasonSheet, row: SheetRow, column: SheetColumn): TemplateResult {
  const view = sheet.cellView({ row, column });
  if (view.kind !== 'figure') return html`<td></td>`;
  const isByHand = view.className.includes('by-hand');
  const state = PAPER_STATES.find((each) => view.className.includes(`state-${each}`));
  const sign = state === undefined ? '' : html`<i>${gridToolsWords(sheet.reader.language).paper.letters[state]}</i> `;
  return html`<td>${sign}<b>${view.main}${isByHand ? '*' : ''}</b>${view.lines.map((line) => (line === '' ? '' : html`<br />${line}`))}</td>`;
}
