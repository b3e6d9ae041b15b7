import { describe, expect, test } from 'vitest';
import { CROP_GROUPS } from './crop-groups.data.ts';

describe('crop groups', () => {
  test.each([
    ['small-vegetables', 0.7, 1.05, 0.95],
    ['solanum', 0.6, 1.15, 0.8],
    ['cucumber', 0.5, 1, 0.8],
  ] as const)('FAO-56 Table 12, %s: Kc %d, %d, %d', (id, kcIni, kcMid, kcEnd) => {
    expect(CROP_GROUPS.find((group) => group.id === id)).toMatchObject({ kcIni, kcMid, kcEnd });
  });

  test.each([
    ['roots-and-tubers', 0.5],
    ['cereals', 0.3],
  ] as const)('FAO-56 Table 12, Kc ini that crops of %s inherit: %d', (id, kcIni) => {
    expect(CROP_GROUPS.find((group) => group.id === id)).toMatchObject({ kcIni });
  });

  test('no group stands twice', () => {
    expect(new Set(CROP_GROUPS.map((group) => group.id)).size).toBe(CROP_GROUPS.length);
  });
});
