import { html, type TemplateResult } from 'lit';
import type { State } from '../../engine/season/season.ts';
import { languageFor } from '../../language/languages.ts';
import type { SeasonSheet } from '../../sheet/season-sheet.ts';
import { NAME_COLUMN, SEASON_COLUMN, type SheetColumn } from '../../sheet/sheet-column.ts';
import type { SheetRow } from '../../sheet/sheet-row.ts';
import { STATE_NAMES } from '../../sheet/words.ts';
import { cautionsTemplate } from '../shared/cautions-template.ts';
import { gridWords } from '../shared/words/grid-words.ts';

/** States that somebody has to act on or to know of, by their letter on paper, where no sign is drawn. */
const PAPER_STATES = { D: 'dry', S: 'short', O: 'over', C: 'closed' } as const satisfies Record<string, State>;

const STATE_LETTERS = Object.entries(PAPER_STATES)
  .map(([letter, state]) => `${letter} ${STATE_NAMES[state].toLowerCase()}`)
  .join('; ');

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
  return html`<div class="runnel-grid__print">${tables}<p>${gridWords.onPaper(STATE_LETTERS)}</p>${cautionsTemplate(hasTank, languageFor(sheet.state.locale))}</div>`;
}

function tableTemplate(sheet: SeasonSheet, columns: readonly SheetColumn[]): TemplateResult {
  return html`<table>
    <thead><tr><th scope="col">${gridWords.zone}</th>${columns.map((column) => html`<th scope="col">${headOf(sheet, column)}</th>`)}</tr></thead>
    <tbody>${sheet.rows.map((row) => rowTemplate(sheet, row, columns))}</tbody>
  </table>`;
}

function headOf({ calendar }: SeasonSheet, column: SheetColumn): string {
  return column.kind === 'week' ? calendar.words(column.week) : gridWords.season;
}

function rowTemplate(sheet: SeasonSheet, row: SheetRow, columns: readonly SheetColumn[]): TemplateResult {
  const name = sheet.face({ row, column: NAME_COLUMN });
  const head = name.kind === 'name' ? `${name.name}, ${name.detail}` : '';
  return html`<tr class=${`runnel-print-${row.kind}`}><th scope="row">${head}</th>${columns.map((column) => cellTemplate(sheet, row, column))}</tr>`;
}

function cellTemplate(sheet: SeasonSheet, row: SheetRow, column: SheetColumn): TemplateResult {
  const face = sheet.face({ row, column });
  if (face.kind !== 'figure') return html`<td></td>`;
  const isByHand = face.className.includes('by-hand');
  const [letter] = Object.entries(PAPER_STATES).find(([, state]) => face.className.includes(`state-${state}`)) ?? [];
  const sign = letter === undefined ? '' : html`<i>${letter}</i> `;
  return html`<td>${sign}<b>${face.main}${isByHand ? '*' : ''}</b>${face.lines.map((line) => (line === '' ? '' : html`<br />${line}`))}</td>`;
}
