/** Paints a view into a table cell. Handsontable empties a cell's class and aria attributes before it asks for one. */
import type { CellView, FigureView, NameView } from '../cells/cell-view.ts';

/** What a cell was last painted with. Its nodes are found in it when they are wanted: held here, they would weigh more. */
const painted = new WeakMap<HTMLElement, CellView>();

/** A figure alone is one text; with a line beneath it stands in an element before that line's start and end. */
type Shape = 'one' | 'lines' | 'name';

/** Class of a cell whose main figure has just changed. */
const CHANGED_CLASS = 'runnel-changed';
export const FOLD_CLASS = 'runnel-fold';

/** While Handsontable draws: it has just emptied what it knows of. Whether the cell shows something else than before. */
export function renderView(td: HTMLTableCellElement, view: CellView): boolean {
  td.className = view.className;
  if (view.kind === 'name') td.setAttribute('role', 'rowheader');
  if (isKept(td, view) && painted.get(td) === view) return false;
  paint(td, view);
  return true;
}

/** Between two drawings, in a cell that stays where it is, the same. A changed figure glows once. */
export function renderChange(td: HTMLTableCellElement, view: CellView): boolean {
  const before = painted.get(td);
  if (before === undefined || before === view) return false;
  td.classList.remove(CHANGED_CLASS, ...before.className.split(' '));
  td.classList.add(...view.className.split(' '));
  if (before.kind === 'figure' && view.kind === 'figure' && before.main !== view.main) td.classList.add(CHANGED_CLASS);
  paint(td, view);
  return true;
}

function paint(td: HTMLTableCellElement, view: CellView): void {
  if (!isKept(td, view)) td.replaceChildren(...emptyNodes(td, shapeOf(view)));
  if (view.kind === 'figure') writeFigure(td, view);
  else writeName(td, view);
  painted.set(td, view);
}

const NODES: Readonly<Record<Shape, number>> = { one: 1, lines: 3, name: 3 };

/** Whether the nodes of what was painted before are still there and fit. */
function isKept(td: HTMLTableCellElement, view: CellView): boolean {
  const before = painted.get(td);
  const shape = shapeOf(view);
  return before !== undefined && shapeOf(before) === shape && td.childNodes.length === NODES[shape];
}

function shapeOf(view: CellView): Shape {
  if (view.kind === 'name') return 'name';
  return view.lines.length === 0 ? 'one' : 'lines';
}

/** Empties a cell that stands for nothing in the season. */
export function renderNothing(td: HTMLTableCellElement): void {
  painted.delete(td);
  td.replaceChildren();
  td.removeAttribute('title');
}

function emptyNodes(td: HTMLTableCellElement, shape: Shape): readonly Node[] {
  return shape === 'name' ? nameNodes(td) : figureNodes(td, shape);
}

/** As few nodes as can be: hundreds of these cells are laid out at every turn of the wheel. */
function figureNodes({ ownerDocument: page }: HTMLElement, shape: Shape): readonly Node[] {
  const text = page.createTextNode('');
  if (shape === 'one') return [text];
  const main = element(page, 'b', 'runnel-main');
  const start = element(page, 'i', 'runnel-start');
  for (const part of [main, start]) part.append(page.createTextNode(''));
  return [main, start, text];
}

function writeFigure(td: HTMLTableCellElement, { main, lines }: FigureView): void {
  const { firstChild, lastChild } = td;
  if (lines.length === 0) {
    write(firstChild, main);
    return;
  }
  const [end = '', start = ''] = lines;
  write(firstChild?.firstChild, main);
  write(lastChild?.previousSibling?.firstChild, start === '' ? NOTHING : unspread(start));
  write(lastChild, ` ${end === '' ? NOTHING : unspread(end)}`);
}

/** Holds its place at one end of a line, where there is nothing to say. */
const NOTHING = '\u200b';

/** The two ends of a line are told apart by the space between them: within one there is none that spreads. */
function unspread(text: string): string {
  return text.replaceAll(/[ \u00a0]/g, '\u202f');
}

function nameNodes({ ownerDocument: page }: HTMLElement): readonly HTMLElement[] {
  const fold = element(page, 'button', FOLD_CLASS) as HTMLButtonElement;
  fold.type = 'button';
  // The cell itself is what the keyboard reaches: Enter on it folds.
  fold.tabIndex = -1;
  return [fold, element(page, 'span', 'runnel-name-text'), element(page, 'span', 'runnel-detail')];
}

function writeName(td: HTMLTableCellElement, view: NameView): void {
  const [fold, name, detail] = td.children as unknown as readonly HTMLElement[];
  if (name !== undefined) name.textContent = view.name;
  if (detail !== undefined) detail.textContent = view.detail;
  if (fold === undefined) return;
  fold.hidden = view.isOpen === undefined;
  fold.setAttribute('aria-expanded', String(view.isOpen === true));
  fold.setAttribute('aria-label', view.foldLabel ?? '');
}

function write(node: Node | null | undefined, text: string): void {
  if (node && node.nodeValue !== text) node.nodeValue = text;
}

function element(page: Document, name: string, className: string): HTMLElement {
  const made = page.createElement(name);
  made.className = className;
  return made;
}
