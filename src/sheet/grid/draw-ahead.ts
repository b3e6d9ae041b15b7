/**
 * While a sheet is scrolled, the library draws all of it anew as soon as one more row or column comes into view. Some more of them are
 * drawn ahead on the side that is scrolled to, so that the next turns of the wheel find them there.
 */
import type { Events } from 'handsontable/base';

/** Rows, and columns, that are drawn ahead. */
const AHEAD = { rows: 7, columns: 3 } as const;

/** First and last that are drawn, by the library's own count. */
interface Band {
  readonly first: number;
  readonly last: number;
}

export function drawAhead(counts: { readonly rows: () => number; readonly columns: () => number }): Partial<Events> {
  const rows = aheadOf(AHEAD.rows, counts.rows);
  const columns = aheadOf(AHEAD.columns, counts.columns);
  return {
    afterViewportRowCalculatorOverride: (calc) => {
      const { first, last } = rows({ first: calc.startRow, last: calc.endRow });
      Object.assign(calc, { startRow: first, endRow: last });
    },
    afterViewportColumnCalculatorOverride: (calc) => {
      const { first, last } = columns({ first: calc.startColumn, last: calc.endColumn });
      Object.assign(calc, { startColumn: first, endColumn: last });
    },
  };
}

/** Widens a band on the side that it has moved to since it was asked for before; where it has not moved, as it did then. */
function aheadOf(most: number, count: () => number): (band: Band) => Band {
  let before: Band | undefined;
  let side = 0;
  return (band) => {
    if (before !== undefined && band.first !== before.first) side = Math.sign(band.first - before.first);
    before = band;
    return {
      first: side < 0 ? Math.max(0, band.first - most) : band.first,
      last: side > 0 ? Math.min(count() - 1, band.last + most) : band.last,
    };
  };
}
