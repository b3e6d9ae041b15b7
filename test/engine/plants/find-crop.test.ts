import { describe, expect, test } from 'vitest';
import type { CropId } from '../../../src/engine/plants/crops.data.ts';
import { cropStagesOf, findCrop } from '../../../src/engine/plants/find-crop.ts';

describe('finding a crop', () => {
  test('gives the row of its id', () => {
    expect(findCrop('tomato').name.en).toBe('Tomato');
  });

  test('refuses a crop that no table has, in words', () => {
    expect(() => findCrop('triffid' as CropId)).toThrow(new RangeError('There is no crop "triffid".'));
  });

  test('gives the stage rows in the order of the table, the default first', () => {
    // California, Mediterranean, arid region.
    expect(cropStagesOf('tomato').map((row) => row.midDays)).toEqual([50, 45, 40]);
    expect(cropStagesOf('broccoli')).toEqual(cropStagesOf('cabbage'));
  });
});
