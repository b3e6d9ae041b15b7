import { describe, expect, it } from 'vitest';
import { seasonSupply } from '../../../../src/engine/supply/season-supply.ts';
import { toSi } from '../../../../src/engine/units.ts';
import { computeSeason } from '../../../../src/plan/compute-season.ts';
import type { Plan, PlanSupply } from '../../../../src/plan/schema/plan-schema.ts';
import { kindsOf, noticed } from '../../../support/noticed.ts';
import { mixedGarden, oneBed, tomatoes, zone } from '../../../support/small-plans.ts';

const meteredGal = (plan: Plan) =>
  [...seasonSupply(computeSeason(plan)).meteredL].map((litres) => litres / toSi(1, 'volume', 'us'));

describe('an allowance that is passed', () => {
  it('of weeks is kept by fewer minutes in every week that passes it, those that would catch up as well', () => {
    const garden = mixedGarden({ choices: {}, log: {} });
    const most = Math.max(...meteredGal(garden));
    const supply: PlanSupply = { sources: garden.supply?.sources ?? [], allowance: { perWeek: 0.8 * most } };
    const { remedies, mended } = noticed({ ...garden, supply }, 'allowance-exceeded');
    expect(remedies).toMatchObject([{ kind: 'fewer-minutes', remaining: 0 }]);
    expect(remedies[0]?.unmetLitresMore).toBeGreaterThanOrEqual(0);
    expect(Math.max(...meteredGal(mended('fewer-minutes')))).toBeLessThanOrEqual(0.8 * most * (1 + 1e-9));
  });

  it('of the season is kept by the same share less in every week', () => {
    const bed = oneBed();
    const used = meteredGal(bed).reduce((sum, gallons) => sum + gallons, 0);
    const supply: PlanSupply = { sources: [], allowance: { perSeason: used * 0.9 } };
    const plan = noticed({ ...bed, supply }, 'allowance-exceeded').mended('fewer-minutes');
    const left = meteredGal(plan).reduce((sum, gallons) => sum + gallons, 0);
    expect(left).toBeLessThanOrEqual(0.9 * used);
    expect(left).toBeGreaterThan(0.85 * used);
  });
});

describe('a tank that runs dry', () => {
  /** April in San Francisco still has rain: 1.29 in. */
  const tanked = (tank: NonNullable<PlanSupply['tank']>): Plan =>
    oneBed({
      season: { firstDay: '2027-03-01', weeks: 14 },
      zones: [zone({ plantings: [tomatoes({ need: { kind: 'class', class: 'moderate' } })] })],
      supply: { sources: [{ name: 'Main' }], tank },
    });

  it('is replaced by one of the size that would last, rounded up to three digits', () => {
    const { notice, remedies, mended } = noticed(tanked({ capacity: 60, start: 60, roofArea: 300 }), 'tank-dry');
    const size = notice.figures.sizeLitres as number;
    const plan = mended('larger-tank');
    const capacity = plan.supply?.tank?.capacity as number;
    expect(toSi(capacity, 'volume', 'us')).toBeGreaterThanOrEqual(size);
    expect(toSi(capacity, 'volume', 'us')).toBeLessThan(size * 1.01);
    expect(String(capacity).replace('.', '').replace(/0+$/, '').length).toBeLessThanOrEqual(3);
    expect(plan.supply?.tank).toMatchObject({ start: 60, roofArea: 300 });
    expect(kindsOf(plan)).not.toContain('tank-dry');
    expect(remedies).toMatchObject([{ kind: 'larger-tank', remaining: 0, cautions: ['tank', 'backflow', 'codes'] }]);
  });

  it('where none lasts becomes as large as the rain can fill, and some still comes from the mains', () => {
    const { notice, remedies, mended } = noticed(tanked({ capacity: 20, start: 0, roofArea: 100 }), 'tank-dry');
    expect(remedies[0]?.remaining).toBeGreaterThan(0);
    const outlook = seasonSupply(computeSeason(mended('larger-tank'))).tank;
    expect(outlook?.overflowL.reduce((sum, litres) => sum + litres, 0)).toBe(0);
    const mains = outlook?.besidesL.reduce((sum, litres) => sum + litres, 0) as number;
    expect(mains).toBeCloseTo(notice.figures.missingLitres as number, 6);
  });

  it('that no rain reaches has no remedy here', () => {
    expect(noticed(tanked({ capacity: 60, start: 60 }), 'tank-dry').remedies).toEqual([]);
  });
});
