/** The classes of a cell, by which the sheet's style draws what it is of and what it carries. */
import type { Measure } from '../sheet-view.ts';
import type { CellView } from './cell-view.ts';

type Name = string | false | undefined;

/** Classes of the sheet's style, with their prefix. */
export function classNames(...names: readonly Name[]): string {
  const given = names.filter((name) => name !== false && name !== undefined);
  return shared(given.map((name) => `runnel-${name}`).join(' '));
}

/** Classes to which others are added. */
export function moreClasses(classes: string, ...names: readonly Name[]): string {
  return shared(`${classes} ${classNames(...names)}`);
}

/** The classes of a figure's cell: what it is of, and what it carries. */
export function figureClass(measure: Measure, ...names: readonly Name[]): string {
  return classNames('cell', measure !== 'all' && 'one', ...names);
}

/** Letters that a cell has room for, in its main figure, in one beside a sign, and in the line beneath. */
const MAIN_ROOM = 6;
const SIGNED_ROOM = 4;
const LINE_ROOM = 10;

/** States that have a sign in the cell's corner. */
const SIGNED = /sign-(?:dry|short|over)\b/;

/** A figure of many digits is written smaller: what is cut off would be read as another figure. */
export function fitted(view: CellView): CellView {
  if (view.kind === 'name') return view;
  const room = SIGNED.test(view.className) ? SIGNED_ROOM : MAIN_ROOM;
  const isLong = view.main.length > room || view.lines.join(' ').length > LINE_ROOM;
  return isLong ? { ...view, className: moreClasses(view.className, 'long') } : view;
}

/** A few dozen texts stand in thousands of cells: each is one string. */
function shared(text: string): string {
  const known = texts.get(text) ?? text;
  texts.set(known, known);
  return known;
}

const texts = new Map<string, string>();
