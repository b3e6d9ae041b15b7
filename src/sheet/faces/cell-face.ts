/** What one cell shows and says: text only, so that a name is never read as markup. */

import type { Measure } from '../sheet-view.ts';
import type { Reading } from './reading.ts';

export interface FigureFace {
  readonly kind: 'figure';
  /** Read first; empty on paper. */
  readonly main: string;
  /** Small beneath it; empty where only one figure is shown. A line is never broken: the cell sees to it. */
  readonly lines: readonly string[];
  readonly className: string;
}

export interface NameFace {
  readonly kind: 'name';
  readonly name: string;
  readonly detail: string;
  readonly className: string;
  /** Whether the plantings show; undefined where nothing folds out. */
  readonly isOpen?: boolean | undefined;
}

export type CellFace = FigureFace | NameFace;

/** Heights that a bar behind a figure can have. */
export const BAR_STEPS = 24;

/** The classes of a figure's cell: what it is of, and what it carries. */
export function figureClass(measure: Measure, ...names: readonly (string | false | undefined)[]): string {
  return classNames('cell', measure !== 'all' && 'one', ...names);
}

/** The figure that is read first: the one that is asked for, or the volume of all three. */
export function mainFigure({ litres, minutes, rainMm }: Figures, { measure, format }: Reading): string {
  if (measure === 'minutes') return format.minutes(minutes);
  return measure === 'rain' ? format.depth(rainMm) : format.volume(litres);
}

interface Figures {
  readonly litres: number;
  readonly minutes: number;
  readonly rainMm: number;
}

/** Letters that a cell has room for, in its main figure, in one beside a sign, and in a line beneath. */
const MAIN_ROOM = 6;
const SIGNED_ROOM = 4;
const LINE_ROOM = 10;

/** States that have a sign in the cell's corner. */
const SIGNED = /state-(?:dry|short|over)\b/;

/** A figure of many digits is written smaller: what is cut off would be read as another figure. */
export function fitted(face: CellFace): CellFace {
  if (face.kind === 'name') return face;
  const room = SIGNED.test(face.className) ? SIGNED_ROOM : MAIN_ROOM;
  const isLong = face.main.length > room || face.lines.some(({ length }) => length > LINE_ROOM);
  return isLong ? { ...face, className: moreClasses(face.className, 'long') } : face;
}

type Name = string | false | undefined;

/** Classes of the sheet's style, with their prefix. */
export function classNames(...names: readonly Name[]): string {
  const given = names.filter((name) => name !== false && name !== undefined);
  return theOne(given.map((name) => `runnel-${name}`).join(' '));
}

/** Classes to which others are added. */
export function moreClasses(classes: string, ...names: readonly Name[]): string {
  return theOne(`${classes} ${classNames(...names)}`);
}

/** A few dozen texts stand in thousands of cells: each is one string. */
function theOne(text: string): string {
  const known = texts.get(text) ?? text;
  texts.set(known, known);
  return known;
}

const texts = new Map<string, string>();
