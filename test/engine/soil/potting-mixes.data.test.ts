import { expect, it } from 'vitest';
import { MIX_IDS, POTTING_MIXES } from '../../../src/engine/soil/potting-mixes.data.ts';

it('every mix has a row, in order', () => {
  expect(POTTING_MIXES.map(({ id }) => id)).toEqual([...MIX_IDS]);
});

// Southern nursery guide: plants can draw 25 to 35 % of the volume of usual mixes; from memory.
it.each(POTTING_MIXES)('$id holds within the published 25 to 35 %', ({ availableWater }) => {
  expect(availableWater).toBeGreaterThanOrEqual(0.25);
  expect(availableWater).toBeLessThanOrEqual(0.35);
});

// Rutgers FS812: a growing plant can use all of a usual container's available water within one or two days. 2.8 L, canopy 0.3 m, 6 mm a day.
it('2.8 L of the usual mix last two days under a canopy of 0.3 m at 6 mm a day', () => {
  const litres = 2.8 * (POTTING_MIXES[0]?.availableWater ?? 0);
  expect(litres / (6 * (Math.PI / 4) * 0.3 ** 2)).toBeCloseTo(2, 1);
});
