import { describe, expect, test } from 'vitest';
import { CROP_IDS, CROPS as RECKONED } from '../../../src/engine/plants/crops.data.ts';
import { CROP_GROUPS } from '../../published/tables/crop-groups.data.ts';
import { CROPS_PRINTED } from '../../published/tables/crops-printed.data.ts';

/** Each crop with all that is printed of it. */
const CROPS = RECKONED.map((crop, at) => ({ ...crop, ...CROPS_PRINTED[at] }));

/** Whole hundredths: a footnote mark fused to a Kc makes a third decimal. */
const isHundredths = (kc: number): boolean => Math.abs(kc * 100 - Math.round(kc * 100)) < 1e-9;

describe('crops', () => {
  // FAO-56 Table 12 (pp. 110-114) and Table 22 (pp. 163-165): Kc ini, mid, end; height; least and largest root depth; p.
  test.each([
    ['broccoli', 0.7, 1.05, 0.95, 0.3, 0.4, 0.6, 0.45],
    ['cabbage', 0.7, 1.05, 0.95, 0.4, 0.5, 0.8, 0.45],
    ['carrots', 0.7, 1.05, 0.95, 0.3, 0.5, 1, 0.35],
    ['lettuce', 0.7, 1, 0.95, 0.3, 0.3, 0.5, 0.3],
    ['spinach', 0.7, 1, 0.95, 0.3, 0.3, 0.5, 0.2],
    ['radish', 0.7, 0.9, 0.85, 0.3, 0.3, 0.5, 0.3],
    ['onion-green', 0.7, 1, 1, 0.3, 0.3, 0.6, 0.3],
    ['onion-dry', 0.7, 1.05, 0.75, 0.4, 0.3, 0.6, 0.3],
    ['garlic', 0.7, 1, 0.7, 0.3, 0.3, 0.5, 0.3],
    ['eggplant', 0.6, 1.05, 0.9, 0.8, 0.7, 1.2, 0.45],
    ['sweet-pepper', 0.6, 1.05, 0.9, 0.7, 0.5, 1, 0.3],
    ['tomato', 0.6, 1.15, 0.8, 0.6, 0.7, 1.5, 0.4],
    ['cucumber', 0.6, 1, 0.75, 0.3, 0.7, 1.2, 0.5],
    ['pumpkin-winter-squash', 0.5, 1, 0.8, 0.4, 1, 1.5, 0.35],
    ['squash-zucchini', 0.5, 0.95, 0.75, 0.3, 0.6, 1, 0.5],
    ['watermelon', 0.4, 1, 0.75, 0.4, 0.8, 1.5, 0.4],
    ['beets', 0.5, 1.05, 0.95, 0.4, 0.6, 1, 0.5],
    ['potato', 0.5, 1.15, 0.75, 0.6, 0.4, 0.6, 0.35],
    ['beans-green', 0.5, 1.05, 0.9, 0.4, 0.5, 0.7, 0.45],
    ['peas-fresh', 0.5, 1.15, 1.1, 0.5, 0.6, 1, 0.35],
    ['sweet-corn', 0.3, 1.15, 1.05, 1.5, 0.8, 1.2, 0.5],
    ['strawberries', 0.4, 0.85, 0.75, 0.2, 0.2, 0.3, 0.2],
    ['asparagus', 0.5, 0.95, 0.3, 0.8, 1.2, 1.8, 0.45],
    ['mint', 0.6, 1.15, 1.1, 0.8, 0.4, 0.8, 0.4],
    ['bush-berries', 0.3, 1.05, 0.5, 1.5, 0.6, 1.2, 0.5],
    ['grapes-table', 0.3, 0.85, 0.45, 2, 1, 2, 0.35],
    ['apple-cherry-pear', 0.45, 0.95, 0.7, 4, 1, 2, 0.5],
    ['peach-stone-fruit', 0.45, 0.9, 0.65, 3, 1, 2, 0.5],
    ['citrus', 0.65, 0.6, 0.65, 3, 1.1, 1.5, 0.5],
    ['turf-cool-season', 0.9, 0.95, 0.95, 0.1, 0.5, 1, 0.4],
    ['turf-warm-season', 0.8, 0.85, 0.85, 0.1, 0.5, 1, 0.5],
  ] as const)('FAO-56 Tables 12 and 22, %s', (id, kcIni, kcMid, kcEnd, heightM, min, max, depletionFraction) => {
    const crop = CROPS.find((candidate) => candidate.id === id);
    expect(crop).toMatchObject({ kcIni, kcMid, kcEnd, heightM, rootDepthM: { min, max }, depletionFraction });
    expect(crop?.source).toContain('FAO-56 Table 12');
  });

  // Root depth midpoint and 1 - p in an open data set of crop water-holding values (PecanProject/pecan, crop_whc.csv).
  test.each([
    ['lettuce', 0.4, 0.7],
    ['tomato', 1.1, 0.6],
    ['strawberries', 0.25, 0.8],
    ['cucumber', 0.95, 0.5],
  ] as const)('the open crop water data agree on %s: root depth %d m, 1 - p %d', (id, rootDepthM, wetShare) => {
    const crop = CROPS.find((candidate) => candidate.id === id);
    expect(((crop?.rootDepthM.min ?? 0) + (crop?.rootDepthM.max ?? 0)) / 2).toBeCloseTo(rootDepthM, 9);
    expect(1 - (crop?.depletionFraction ?? 0)).toBeCloseTo(wetShare, 9);
  });

  test.each([
    ['sweet-pepper', 1.15],
    ['tomato', 1.2],
    ['cucumber', 1.15],
    ['beans-green', 1.15],
  ] as const)('FAO-56 Table 12, footnote: Kc mid of %s on supports is %d', (id, kcMidSupported) => {
    expect(CROPS.find((candidate) => candidate.id === id)).toMatchObject({ kcMidSupported });
  });

  test('where a range is printed both ends are kept (FAO-56 Table 12: tomato, asparagus, mint)', () => {
    expect(CROPS.filter((crop) => crop.kcEndRange).map((crop) => [crop.id, crop.kcEndRange])).toEqual([
      ['tomato', [0.7, 0.9]],
    ]);
    expect(CROPS.filter((crop) => crop.heightRangeM).map((crop) => [crop.id, crop.heightRangeM])).toEqual([
      ['asparagus', [0.2, 0.8]],
      ['mint', [0.6, 0.8]],
    ]);
  });

  test('a Kc of three decimals is a footnote mark read as a digit', () => {
    expect(isHundredths(1.052)).toBe(false);
    expect(isHundredths(1.15)).toBe(true);
  });

  test('no Kc has three decimals', () => {
    for (const crop of CROPS) {
      const all = [crop.kcIni, crop.kcMid, crop.kcEnd, crop.kcMidSupported ?? 0, ...(crop.kcEndRange ?? [])];
      expect(
        all.filter((kc) => !isHundredths(kc)),
        crop.id,
      ).toEqual([]);
    }
  });

  test('ids and rows stand in the same order, with nothing besides', () => {
    expect(RECKONED.map((crop) => crop.id)).toEqual([...CROP_IDS]);
    expect(CROPS_PRINTED.map((crop) => crop.id)).toEqual([...CROP_IDS]);
    expect(CROPS).toHaveLength(31);
  });

  test("a blank Kc ini is the group's", () => {
    const inherited = CROPS.filter((crop) => crop.kcIniFromGroup);
    expect(inherited).toHaveLength(17);
    for (const crop of inherited) {
      expect(CROP_GROUPS.find((group) => group.id === crop.group)?.kcIni, crop.id).toBe(crop.kcIni);
    }
  });

  test('every value lies where a crop can be', () => {
    for (const crop of CROPS) {
      expect(crop.rootDepthM.min, crop.id).toBeLessThan(crop.rootDepthM.max);
      expect(crop.depletionFraction, crop.id).toBeGreaterThanOrEqual(0.1);
      expect(crop.depletionFraction, crop.id).toBeLessThanOrEqual(0.8);
      expect(crop.kcMidSupported ?? crop.kcMid + 1, crop.id).toBeGreaterThan(crop.kcMid);
    }
  });
});
