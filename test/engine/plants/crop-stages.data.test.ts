import { describe, expect, test } from 'vitest';
import {
  ASSUMPTION,
  type CropStageLengths,
  CROP_STAGES as RECKONED,
} from '../../../src/engine/plants/crop-stages.data.ts';
import { CROP_IDS } from '../../../src/engine/plants/crops.data.ts';
import { CROP_STAGES_PRINTED, type CropStagesPrinted } from '../../published/tables/crop-stages-printed.data.ts';

/** Each row with all that is printed of it. */
const CROP_STAGES = RECKONED.map((row, at) => ({ ...row, ...(CROP_STAGES_PRINTED[at] as CropStagesPrinted) }));
const sumOf = (row: CropStageLengths): number => row.iniDays + row.devDays + row.midDays + row.lateDays;
const published = CROP_STAGES.filter((row) => row.source !== ASSUMPTION);

describe('crop stages', () => {
  test('stand in the order of what is printed of them, row by row', () => {
    expect(RECKONED.map((row) => row.cropIds)).toEqual(CROP_STAGES_PRINTED.map((row) => row.cropIds));
  });

  // FAO-56 Table 11 (pp. 104-108): ini, dev, mid, late.
  test.each([
    ['lettuce', 'Mediterranean', 20, 30, 15, 10],
    ['lettuce', 'Mediterranean', 30, 40, 25, 10],
    ['spinach', 'Mediterranean', 20, 20, 20, 5],
    ['radish', 'Mediterranean; Europe', 5, 10, 15, 5],
    ['cabbage', 'Mediterranean', 20, 30, 20, 10],
    ['broccoli', 'Mediterranean', 20, 30, 20, 10],
    ['carrots', 'Mediterranean', 30, 40, 60, 20],
    ['sweet-pepper', 'Europe and Mediterranean', 30, 35, 40, 20],
    ['tomato', 'California', 35, 40, 50, 30],
    ['tomato', 'Mediterranean', 30, 40, 45, 30],
    ['tomato', 'Arid region', 30, 40, 40, 25],
    ['cucumber', 'Arid region', 20, 30, 40, 15],
    ['squash-zucchini', 'Mediterranean; Europe', 20, 30, 25, 15],
    ['squash-zucchini', 'Mediterranean; arid region', 25, 35, 25, 15],
    ['pumpkin-winter-squash', 'Europe', 25, 35, 35, 25],
    ['beans-green', 'California and Mediterranean', 20, 30, 30, 10],
    ['beans-green', 'California and Mediterranean', 15, 25, 25, 10],
    ['peas-fresh', 'Europe', 15, 25, 35, 15],
    ['potato', 'Continental climate', 25, 30, 45, 30],
    ['sweet-corn', 'Mediterranean', 20, 25, 25, 10],
    ['sweet-corn', 'Idaho, USA', 30, 30, 30, 10],
    ['apple-cherry-pear', 'High latitudes', 20, 70, 90, 30],
    ['peach-stone-fruit', 'High latitudes', 20, 70, 90, 30],
    ['grapes-table', 'High latitudes', 20, 50, 90, 20],
  ] as const)('FAO-56 Table 11, %s, %s: %d, %d, %d, %d days', (cropId, region, iniDays, devDays, midDays, lateDays) => {
    expect(published).toContainEqual(
      expect.objectContaining({
        cropIds: expect.arrayContaining([cropId]),
        region,
        iniDays,
        devDays,
        midDays,
        lateDays,
        fromMemory: false,
      }),
    );
  });

  test('the stages of a published row add up to its printed total, the Idaho corn row apart (FAO-56 Table 11)', () => {
    for (const row of published) {
      const [least, most] = row.printedTotalDays ?? [0, 0];
      expect(sumOf(row), row.cropIds.join()).toBeGreaterThanOrEqual(least);
      expect(sumOf(row), row.cropIds.join()).toBeLessThanOrEqual(most);
    }
    const ranged = published.filter((row) => row.printedTotalDays?.[0] !== row.printedTotalDays?.[1]);
    expect(ranged.map((row) => row.cropIds)).toEqual([['spinach'], ['sweet-corn']]);
  });

  test('where a range is printed both ends are kept, the used length between them and said in the note', () => {
    const ranged = CROP_STAGES.filter((row) => row.printedRange);
    expect(ranged.map((row) => [row.cropIds[0], row.printedRange])).toEqual([
      ['spinach', { stage: 'mid', minDays: 15, maxDays: 25 }],
      ['sweet-pepper', { stage: 'ini', minDays: 25, maxDays: 30 }],
    ]);
    for (const row of ranged) {
      const used = row.printedRange?.stage === 'ini' ? row.iniDays : row.midDays;
      expect(used).toBeGreaterThanOrEqual(row.printedRange?.minDays ?? Number.NaN);
      expect(used).toBeLessThanOrEqual(row.printedRange?.maxDays ?? Number.NaN);
      expect(row.note).toContain('is used');
    }
  });

  test('what no publication gives is marked as an assumption of this kit, for these crops alone', () => {
    const assumed = CROP_STAGES.filter((row) => row.source === 'assumption of this kit');
    expect(assumed.flatMap((row) => row.cropIds)).toEqual([
      'strawberries',
      'garlic',
      'mint',
      'bush-berries',
      'turf-cool-season',
      'turf-warm-season',
    ]);
    for (const row of assumed) expect(row.printedTotalDays).toBeNull();
  });

  test('rows from memory say so', () => {
    for (const row of CROP_STAGES) expect(row.source.includes('from memory'), row.cropIds.join()).toBe(row.fromMemory);
  });

  test('every crop has stages, in whole days above 0, within a year', () => {
    expect(CROP_IDS.filter((id) => !CROP_STAGES.some((row) => row.cropIds.includes(id)))).toEqual([]);
    for (const row of CROP_STAGES) {
      for (const days of [row.iniDays, row.devDays, row.midDays, row.lateDays]) {
        expect(Number.isInteger(days) && days > 0, row.cropIds.join()).toBe(true);
      }
      expect(sumOf(row), row.cropIds.join()).toBeLessThanOrEqual(365);
    }
  });
});
