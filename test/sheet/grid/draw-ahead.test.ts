import { describe, expect, it } from 'vitest';
import { drawAhead } from '../../../src/sheet/grid/draw-ahead.ts';

/** Bands of rows, one after the other, as they come out of a sheet of 100 rows. */
function drawn(...bands: readonly (readonly [first: number, last: number])[]): readonly (readonly [number, number])[] {
  const { afterViewportRowCalculatorOverride } = drawAhead({ rows: () => 100, columns: () => 100 });
  return bands.map(([startRow, endRow]) => {
    const calc = { startRow, endRow };
    afterViewportRowCalculatorOverride?.(calc);
    return [calc.startRow, calc.endRow];
  });
}

describe('rows drawn ahead', () => {
  it('are none before anybody has scrolled', () => {
    expect(drawn([0, 20])).toEqual([[0, 20]]);
  });

  it('lie on the side that is scrolled to, and stay there while nothing moves', () => {
    const [, down, still, up] = drawn([10, 30], [13, 33], [13, 33], [11, 31]);
    expect(down?.[0]).toBe(13);
    expect(down?.[1]).toBeGreaterThan(33);
    expect(still).toEqual(down);
    expect(up?.[0]).toBeLessThan(11);
    expect(up?.[1]).toBe(31);
  });

  it('end with the sheet', () => {
    expect(drawn([70, 90], [79, 99])[1]).toEqual([79, 99]);
    expect(drawn([9, 29], [0, 20])[1]).toEqual([0, 20]);
  });
});
