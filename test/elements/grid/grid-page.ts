import { sendKeys, sendMouse } from '@web/test-runner-commands';
import type Handsontable from 'handsontable/base';
import '../../../src/elements/grid/define.ts';
import '../../../src/elements/plan/define.ts';
import type { RunnelGrid } from '../../../src/elements/grid/runnel-grid.ts';
import type { RunnelPlan } from '../../../src/elements/plan/runnel-plan.ts';
import { entryWords } from '../../../src/language/en/entry.ts';
import { sheetActionsWords } from '../../../src/language/en/sheet-actions.ts';
import { formatFor } from '../../../src/language/format/format.ts';
import { isolated } from '../../../src/language/format/isolated.ts';
import { US_ENGLISH } from '../../../src/language/language.ts';
import { readerFor } from '../../../src/language/reader.ts';
import type { Edit } from '../../../src/plan/edits/edit.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { weekFirstDay } from '../../../src/plan/season-weeks.ts';
import { bindingOf } from '../../../src/sheet/grid/bindings.ts';
import { rowReference } from '../../../src/sheet/reference.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { html, onPage, quiet } from '../shared/on-page.ts';

/** What the grid says to an American reader. */
export const ENTRY = entryWords(US_ENGLISH);
export const ACTIONS = sheetActionsWords(US_ENGLISH);
export const FORMAT = formatFor(readerFor('en-US', 'us'));

export const LICENSE_KEY = 'non-commercial-and-evaluation';

export interface GridPage {
  readonly plan: RunnelPlan;
  readonly grid: RunnelGrid;
  /** Every edit that was made so far. */
  readonly edits: readonly Edit[];
}

/** A grid in a plan, drawn to its end, between two buttons. */
export async function gridPage(plan: Plan = mixedGarden(), today = '2027-07-14'): Promise<GridPage> {
  const place = onPage(html`<button id="before">Before</button>
    <runnel-plan .plan=${plan}><runnel-grid license-key=${LICENSE_KEY} today=${today}></runnel-grid></runnel-plan>
    <button id="after">After</button>`);
  const element = place.querySelector('runnel-plan');
  const grid = place.querySelector('runnel-grid');
  if (element === null || grid === null) throw new Error('the page is not there');
  const edits: Edit[] = [];
  element.addEventListener('runnel-change', ({ edit }) => edit && edits.push(edit));
  await quiet(element);
  // It opens on this week; most of what is tried at a desk is in spring.
  if (innerWidth > 600) gridOf(grid).scrollViewportTo({ col: 2, horizontalSnap: 'start' });
  return { plan: element, grid, edits };
}

/** The grid's own instance, for what no page can see. */
export function gridOf(grid: Element): Handsontable.Core {
  const wrapper = [...grid.querySelectorAll('*')].find((element) => '__hotInstance' in element);
  if (wrapper === undefined) throw new Error('there is no grid');
  return (wrapper as unknown as { readonly __hotInstance: Handsontable.Core }).__hotInstance;
}

/**
 * A cell of a row by its id (`beds`, `beds/shrubs`, `eto`, `rain`, `total`) and the first day of its week, ISO 8601; without a day
 * that of the whole season. Its title is written.
 */
export function cell(grid: Element, row: string, day?: string): HTMLTableCellElement {
  const hot = gridOf(grid);
  const binding = bindingOf(hot);
  binding?.titles.writeAll();
  return found(grid, '.runnel-cell', `${row} ${day ?? 'season'}`, (td) => {
    const { row: visualRow, col } = hot.getCoords(td) ?? {};
    const at = typeof visualRow === 'number' && typeof col === 'number' ? binding?.cell(visualRow, col) : undefined;
    if (binding === undefined || at === undefined || at.column.kind === 'name') return false;
    const reference = rowReference(at.row);
    const id =
      typeof reference === 'string' ? reference : [reference.zone, reference.planting].filter(Boolean).join('/');
    const first =
      at.column.kind === 'week' ? weekFirstDay(binding.setting.sheet.state.plan.season, at.column.week) : undefined;
    return id === row && first === day;
  });
}

/** The cell in the first column with this name. */
export function nameCell(grid: Element, name: string): HTMLTableCellElement {
  return found(
    grid,
    '.runnel-name',
    name,
    (td) => td.querySelector('.runnel-name-text')?.textContent === isolated(name),
  );
}

function found(
  grid: Element,
  selector: string,
  sought: string,
  fits: (td: HTMLTableCellElement) => boolean,
): HTMLTableCellElement {
  // Frozen rows and columns lie a second time over those beneath: the one that a pointer meets counts.
  const cells = [...grid.querySelectorAll<HTMLTableCellElement>(`td${selector}`)].filter(fits);
  const wanted = cells.find(isOnTop) ?? cells[0];
  if (wanted === undefined) throw new Error(`there is no cell ${sought}`);
  return wanted;
}

function isOnTop(td: Element): boolean {
  const { left, top, width, height } = td.getBoundingClientRect();
  return td.contains(document.elementFromPoint(left + width / 2, top + height / 2));
}

/** What stands in a cell: its main figure, then what is at the end and at the start of the line beneath; or name and detail. */
export function linesOf(td: Element): readonly string[] {
  const texts = [...td.childNodes].map(({ textContent }) =>
    (textContent ?? '')
      .replaceAll('\u200b', '')
      .replaceAll(/[\u00a0\u202f]/g, ' ')
      .trim(),
  );
  const [main = '', start = '', end = ''] = texts;
  return (td.classList.contains('runnel-name') ? texts : [main, end, start]).filter((line) => line !== '');
}

export async function click(target: Element, button: 'left' | 'right' = 'left'): Promise<void> {
  target.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  const { left, top, width, height } = target.getBoundingClientRect();
  await sendMouse({ type: 'click', button, position: [Math.round(left + width / 2), Math.round(top + height / 2)] });
}

/** Keys one after the other; `Shift+Tab` holds one while the other is pressed. */
export async function press(...keys: readonly string[]): Promise<void> {
  for (const key of keys) {
    const [last = '', ...held] = key.split('+').reverse();
    for (const down of held) await sendKeys({ down });
    await sendKeys({ press: last });
    for (const up of held) await sendKeys({ up });
  }
}

export async function type(text: string): Promise<void> {
  await sendKeys({ type: text });
}

/** Lets a refused editor come back, a plan compute and every view follow. */
export async function afterwards(page: GridPage): Promise<void> {
  await new Promise((resolve) => setTimeout(resolve));
  await quiet(page.plan);
}

/** With ordinary spaces. */
export const plain = (text: string | null | undefined): string => (text ?? '').replaceAll('\u00a0', ' ');

/** What stands beside a cell. */
export const callout = (): string => plain(document.querySelector('.runnel-callout:not([hidden])')?.textContent);
/** The last announcement. */
export const announced = (): string => plain(document.querySelector('.runnel-announcement')?.textContent);

/** An item of the open context menu. */
export function menuItem(name: string): HTMLElement {
  const items = [...document.querySelectorAll<HTMLElement>('.htContextMenu td:not(.htSeparator)')];
  const wanted = items.find(({ textContent }) => plain(textContent) === plain(name));
  if (wanted === undefined) throw new Error(`the menu has no ${name}: ${items.map((item) => item.textContent).join()}`);
  return wanted;
}
