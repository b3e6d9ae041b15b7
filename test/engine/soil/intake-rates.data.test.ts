import { describe, expect, test } from 'vitest';
import { INTAKE_RATES, INTAKE_SLOPE_CLASSES_PERCENT } from '../../../src/engine/soil/intake-rates.data.ts';

const MULTIPLIERS = [1, 0.8, 0.6, 0.4, 0.25];

describe('intake rates', () => {
  // USDA-based intake table, from memory: in/h on slopes of 0-4, 5-8, 8-12, 12-16 and over 16 %.
  test.each([
    ['coarse-sand', [1.25, 1, 0.75, 0.5, 0.31]],
    ['fine-sand', [0.94, 0.75, 0.56, 0.38, 0.24]],
    ['loamy-sand', [0.88, 0.7, 0.53, 0.35, 0.22]],
    ['sandy-loam', [0.75, 0.6, 0.45, 0.3, 0.19]],
    ['loam', [0.54, 0.43, 0.33, 0.22, 0.14]],
    ['silt-loam', [0.5, 0.4, 0.3, 0.2, 0.13]],
    ['clay-loam', [0.25, 0.2, 0.15, 0.1, 0.06]],
    ['silty-clay', [0.19, 0.15, 0.11, 0.08, 0.05]],
    ['clay', [0.13, 0.1, 0.08, 0.05, 0.03]],
  ] as const)('USDA-based table, %s, %j in/h', (texture, inchesPerHour) => {
    const row = INTAKE_RATES[texture];
    expect(row.mmPerHour.map((rate) => rate / 25.4)).toEqual(inchesPerHour.map((rate) => expect.closeTo(rate, 12)));
    expect(row.fromMemory).toBe(true);
  });

  test('the slope multipliers 1, 0.8, 0.6, 0.4 and 0.25 reproduce the table to 0.01 in/h', () => {
    for (const [texture, { mmPerHour }] of Object.entries(INTAKE_RATES)) {
      mmPerHour.forEach((rate, slope) => {
        const product = mmPerHour[0] * (MULTIPLIERS[slope] ?? Number.NaN);
        expect(Math.abs(rate - product) / 25.4, `${texture} ${slope}`).toBeLessThanOrEqual(0.01);
      });
    }
  });

  test('there are nine textures and five slope classes, the last without end', () => {
    expect(Object.keys(INTAKE_RATES)).toHaveLength(9);
    expect(INTAKE_SLOPE_CLASSES_PERCENT).toEqual([4, 8, 12, 16, Number.POSITIVE_INFINITY]);
  });
});
