import { describe, expect, it } from 'vitest';
import type { Garden, SupplyTank } from '../../../../src/engine/garden.ts';
import { runSeason } from '../../../../src/engine/season/run-season.ts';
import { noticesOfKind } from '../../../support/notices.ts';
import { FIRST_DAY, plainGarden } from '../../../support/plain-garden.ts';

const TANK: SupplyTank = { capacityLitres: 1000, startLitres: 1000, roofAreaM2: 0, runoffCoefficient: 0.9 };

/** 109 or 110 L on the fourth and the seventh day of each of ten weeks (`plain-garden.ts`): 2190 L in all. */
function told(tank: SupplyTank | undefined, garden: Partial<Garden> = {}, hasMains = false) {
  const sources = hasMains ? [{ from: FIRST_DAY, name: 'Main' }] : [];
  const supply = { ...plainGarden().supply, sources, ...(tank === undefined ? {} : { tank }) };
  return noticesOfKind(runSeason(plainGarden(undefined, { ...garden, supply })), 'tank-dry');
}

describe('a tank that runs dry', () => {
  it('without rain gives 1000 of 2190 L: dry on the seventh day of the fifth week, and no size would last', () => {
    expect(told(TANK)).toMatchObject([
      {
        kind: 'tank-dry',
        severity: 'danger',
        remedy: 'larger-tank',
        weeks: [4, 5, 6, 7, 8, 9],
        figures: {
          mainsLitres: expect.closeTo(1190, 6),
          missingLitres: expect.closeTo(1190, 6),
          capacityLitres: 1000,
          firstDryDay: 4 * 7 + 6,
        },
      },
    ]);
  });

  it('is a note where the mains make it up', () => {
    expect(told(TANK, {}, true)).toMatchObject([{ severity: 'note' }]);
  });

  it('tells the size that would last where enough rain ran over: a storm on the second day, then 2200 L drawn', () => {
    // On that day 200 m2 bring 9 m3 to the full tank. The bed, too, gets 50 mm, and needs no water before the third week.
    const observed = { days: new Map([[FIRST_DAY + 1, { rainMm: 50 }]]), weeks: new Map() };
    const [notice] = told({ ...TANK, roofAreaM2: 200 }, { observed });
    const drawn = 1000 + (notice?.figures.mainsLitres as number);
    expect(notice?.figures.sizeLitres).toBeCloseTo(drawn, 6);
    expect(notice?.figures.overflowLitres).toBeCloseTo(9000, 6);
    const size = notice?.figures.sizeLitres as number;
    expect(told({ ...TANK, capacityLitres: size, roofAreaM2: 200 }, { observed })).toEqual([]);
  });

  it('is not told of one that lasts, or where there is none', () => {
    expect(told({ ...TANK, capacityLitres: 2200, startLitres: 2200 })).toEqual([]);
    expect(told(undefined)).toEqual([]);
  });
});
