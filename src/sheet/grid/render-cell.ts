/** Paints a face into a table cell. Handsontable empties a cell's class, style and aria attributes before it asks for one. */
import type { CellFace, FigureFace, NameFace } from '../faces/cell-face.ts';

/** What a cell was last painted with: child nodes are kept for as long as their kind fits. */
interface Painted {
  face: CellFace;
  readonly kind: CellFace['kind'];
  readonly nodes: readonly HTMLElement[];
}

const painted = new WeakMap<HTMLElement, Painted>();

/** Class of a cell whose main figure has just changed. */
const CHANGED_CLASS = 'runnel-changed';
export const FOLD_CLASS = 'runnel-fold';

/** `marksChange`: let a changed figure glow once. */
export function renderFace(td: HTMLTableCellElement, face: CellFace, marksChange: boolean): void {
  td.className = face.className;
  if (face.kind === 'name') td.setAttribute('role', 'rowheader');
  else if (face.bar !== undefined) td.style.setProperty('--_bar', `${Math.round(face.bar * 100)}%`);
  const kept = keptIn(td, face);
  if (kept?.face === face) return;
  if (marksChange && isChanged(kept?.face, face)) td.classList.add(CHANGED_CLASS);
  const here = kept ?? start(td, face);
  if (face.kind === 'figure') writeFigure(here.nodes, face);
  else writeName(here.nodes, face);
  // Its figures are the cell's name; all of it in words, which the pointer shows as well, its description.
  td.title = face.kind === 'figure' ? face.label : face.name;
  here.face = face;
}

/** What was painted before, where its nodes are still there and fit. */
function keptIn(td: HTMLTableCellElement, { kind }: CellFace): Painted | undefined {
  const before = painted.get(td);
  return before?.kind === kind && before.nodes[0]?.parentNode === td ? before : undefined;
}

/** Empties a cell that stands for nothing in the season. */
export function renderNothing(td: HTMLTableCellElement): void {
  painted.delete(td);
  td.replaceChildren();
  td.removeAttribute('title');
}

function isChanged(before: CellFace | undefined, face: CellFace): boolean {
  return before?.kind === 'figure' && face.kind === 'figure' && before.main !== face.main;
}

function start(td: HTMLTableCellElement, face: CellFace): Painted {
  const nodes = face.kind === 'figure' ? figureNodes(td) : nameNodes(td);
  td.replaceChildren(...nodes);
  const fresh: Painted = { face, kind: face.kind, nodes };
  painted.set(td, fresh);
  return fresh;
}

function figureNodes(td: HTMLElement): readonly HTMLElement[] {
  return [element(td, 'b', 'runnel-main'), element(td, 'span', 'runnel-line'), element(td, 'span', 'runnel-line')];
}

function writeFigure(nodes: readonly HTMLElement[], face: FigureFace): void {
  write(nodes[0], face.main);
  write(nodes[1], face.lines[0] ?? '');
  write(nodes[2], face.lines[1] ?? '');
}

function nameNodes(td: HTMLElement): readonly HTMLElement[] {
  const fold = element(td, 'button', FOLD_CLASS) as HTMLButtonElement;
  fold.type = 'button';
  // The cell itself is what the keyboard reaches: Enter on it folds.
  fold.tabIndex = -1;
  return [fold, element(td, 'span', 'runnel-name-text'), element(td, 'span', 'runnel-detail')];
}

function writeName([fold, name, detail]: readonly HTMLElement[], face: NameFace): void {
  write(name, face.name);
  write(detail, face.detail);
  if (fold === undefined) return;
  fold.hidden = face.isOpen === undefined;
  fold.setAttribute('aria-expanded', String(face.isOpen === true));
  fold.setAttribute('aria-label', `Plantings of ${face.name}`);
}

function write(node: HTMLElement | undefined, text: string): void {
  if (node === undefined) return;
  const child = node.firstChild;
  if (child === null) node.textContent = text;
  else if ((child as Text).data !== text) (child as Text).data = text;
}

function element(from: HTMLElement, name: string, className: string): HTMLElement {
  const made = from.ownerDocument.createElement(name);
  made.className = className;
  return made;
}
