import type { Season } from '../../engine/season/season.ts';
import type { SheetColumn } from '../sheet-cell.ts';
import type { SheetRow } from '../sheet-row.ts';
import { fitted } from './cell-classes.ts';
import type { CellContext } from './cell-context.ts';
import type { CellView } from './cell-view.ts';
import { makeCellView } from './make-cell-view.ts';

type Views = (CellView | undefined)[];

/** What the cells of one sheet show, each made once: a part of the season that stays the same keeps its views. */
export class CellViewCache {
  readonly #context: CellContext;
  /** By the object whose change makes a row's views stale; by week, then the season's, then the name's. */
  readonly #made = new WeakMap<object, Views>();

  constructor(context: CellContext) {
    this.#context = context;
  }

  view(season: Season, row: SheetRow, column: SheetColumn): CellView {
    const weeks = season.garden.span.weeks;
    const at = column.kind === 'week' ? column.week : column.kind === 'season' ? weeks : weeks + 1;
    const part = column.kind === 'name' ? row : partOf(season, row);
    let views = this.#made.get(part);
    if (views === undefined) {
      views = [];
      this.#made.set(part, views);
    }
    let view = views[at];
    if (view === undefined) {
      view = fitted(makeCellView(season, row, column, this.#context));
      views[at] = view;
    }
    return view;
  }
}

/** The part of the season that a row's figures are read from. */
function partOf(season: Season, row: SheetRow): object {
  switch (row.kind) {
    case 'eto':
    case 'rain':
      return season.weather[row.kind];
    case 'zone':
      return row.zone;
    case 'planting':
      return row.planting;
    case 'total':
      return season;
  }
}
