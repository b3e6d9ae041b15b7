import { sendKeys, sendMouse } from '@web/test-runner-commands';
import type Handsontable from 'handsontable/base';
import '../../../src/elements/grid/define.ts';
import '../../../src/elements/plan/define.ts';
import type { RunnelGrid } from '../../../src/elements/grid/runnel-grid.ts';
import type { RunnelPlan } from '../../../src/elements/plan/runnel-plan.ts';
import type { Edit } from '../../../src/plan/edits/edit.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { html, onPage, quiet } from '../shared/on-page.ts';

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
  return { plan: element, grid, edits };
}

/** The grid's own instance, for what no page can see. */
export function gridOf(grid: Element): Handsontable.Core {
  const wrapper = [...grid.querySelectorAll('*')].find((element) => '__hotInstance' in element);
  if (wrapper === undefined) throw new Error('there is no grid');
  return (wrapper as unknown as { readonly __hotInstance: Handsontable.Core }).__hotInstance;
}

/** The cell that says `label` at the start of its description, or a name. */
export function cell(grid: Element, label: string): HTMLTableCellElement {
  const found = [...grid.querySelectorAll<HTMLTableCellElement>('td.runnel-cell, td.runnel-name')].find(
    (td) =>
      td.getAttribute('aria-label')?.startsWith(label) || td.querySelector('.runnel-name-text')?.textContent === label,
  );
  if (found === undefined) throw new Error(`no cell says ${label}`);
  return found;
}

/** What stands in a cell, line by line. */
export function linesOf(td: Element): readonly string[] {
  return [...td.children].map((child) => (child.textContent ?? '').replaceAll('\u00a0', ' ')).filter((line) => line !== '');
}

export async function click(target: Element, button: 'left' | 'right' = 'left'): Promise<void> {
  target.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  const { left, top, width, height } = target.getBoundingClientRect();
  await sendMouse({ type: 'click', button, position: [Math.round(left + width / 2), Math.round(top + height / 2)] });
}

export async function press(...keys: readonly string[]): Promise<void> {
  for (const key of keys) await sendKeys({ press: key });
}

export async function type(text: string): Promise<void> {
  await sendKeys({ type: text });
}

/** Lets a refused editor come back, a plan compute and every view follow. */
export async function afterwards(page: GridPage): Promise<void> {
  await new Promise((resolve) => setTimeout(resolve));
  await quiet(page.plan);
}

export const callout = (): string => document.querySelector<HTMLElement>('.runnel-callout:not([hidden])')?.innerText ?? '';
export const spoken = (): string => document.querySelector('.runnel-spoken')?.textContent ?? '';
