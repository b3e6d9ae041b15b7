import { describe, expect, it } from 'vitest';
import type { GardenSupply } from '../../../../src/engine/garden.ts';
import { runSeason } from '../../../../src/engine/season/run-season.ts';
import { noticesOfKind } from '../../../support/notices.ts';
import { plainGarden } from '../../../support/plain-garden.ts';

/**
 * 109.375 min of 1 L/min on two days of each of ten weeks (`plain-garden.ts`): as whole minutes now 109, now 110, so 218 or 220 L a week
 * and 2190 L in all.
 */
const told = (allowance: Partial<GardenSupply>) =>
  noticesOfKind(
    runSeason(plainGarden(undefined, { supply: { ...plainGarden().supply, ...allowance } })),
    'allowance-exceeded',
  );

describe('an allowance that is passed', () => {
  it('in weeks: 220 L of 200', () => {
    expect(told({ allowanceLitresPerWeek: 200 })).toMatchObject([
      {
        kind: 'allowance-exceeded',
        severity: 'warning',
        remedy: 'use-less',
        weeks: [0, 1, 2, 3, 4, 5, 6, 7, 8, 9],
        figures: { usedLitres: expect.closeTo(220, 6), weekAllowanceLitres: 200, overLitres: expect.closeTo(190, 6) },
      },
    ]);
  });

  it('over the season: 2190 L of 1000, passed in the fifth week', () => {
    expect(told({ allowanceLitresPerSeason: 1000 })).toMatchObject([
      {
        firstWeek: 4,
        lastWeek: 9,
        figures: {
          usedLitres: expect.closeTo(2190, 6),
          seasonAllowanceLitres: 1000,
          overLitres: expect.closeTo(1190, 6),
        },
      },
    ]);
  });

  it('both ways is told twice, and a tank counts for what it gives', () => {
    expect(told({ allowanceLitresPerWeek: 200, allowanceLitresPerSeason: 1000 })).toHaveLength(2);
    const tank = { capacityLitres: 1300, startLitres: 1300, roofAreaM2: 0, runoffCoefficient: 0 };
    expect(told({ allowanceLitresPerSeason: 1000, tank })).toEqual([]);
  });

  it('is not told where it is kept, or there is none', () => {
    expect(told({ allowanceLitresPerWeek: 220.001, allowanceLitresPerSeason: 2200.01 })).toEqual([]);
    expect(told({})).toEqual([]);
  });
});
