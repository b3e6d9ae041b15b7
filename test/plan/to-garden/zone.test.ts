import { describe, expect, it } from 'vitest';
import { gardenOf } from '../../../src/plan/garden-of.ts';
import type { PlanZone } from '../../../src/plan/schema/plan-schema.ts';
import { oneBed, shrubs, tomatoes, zone } from '../../support/small-plans.ts';

const convert = (change: Partial<PlanZone>, site: { readonly slopePercent?: number } = {}) => {
  const [converted] = gardenOf(oneBed({ zones: [zone(change)], site: { ...oneBed().site, ...site } })).zones;
  if (converted === undefined) throw new Error('the zone is not there');
  return converted;
};

describe('the soil of a zone', () => {
  it('is the site’s: loam, FAO-56 Table 19, 0.13 to 0.18 m3/m3', () => {
    expect(convert({}).soil).toMatchObject({ texture: 'loam', availableWater: 0.155, slopePercent: 0 });
  });

  it('or its own', () => {
    expect(convert({ soil: 'clay', slopePercent: 10 }, { slopePercent: 4 }).soil).toMatchObject({
      texture: 'clay',
      availableWater: 0.16,
      slopePercent: 10,
    });
    expect(convert({}, { slopePercent: 4 }).soil.slopePercent).toBe(4);
  });
});

describe('the efficiency of a zone', () => {
  const spray = tomatoes({ lines: [{ kind: 'spray', flow: 10, count: 2 }] });

  it.each<[string, Partial<PlanZone>, number, string]>([
    // California Code of Regulations, Title 23 (2015): drip 0.81, overhead spray 0.75.
    ['drip', {}, 0.81, 'default'],
    ['a spray in the zone: the mean of its lines', { plantings: [shrubs(), spray] }, 0.78, 'default'],
    ['an efficiency that was given', { application: { kind: 'efficiency', value: 0.7 } }, 0.7, 'efficiency'],
    // 1 over the scheduling multiplier: 0.4 + 0.6 x 0.75.
    [
      'a distribution uniformity',
      { application: { kind: 'distribution-uniformity', value: 0.75 } },
      0.85,
      'distribution-uniformity',
    ],
  ])('%s', (_name, change, efficiency, efficiencyBasis) => {
    const converted = convert(change);
    expect(converted.efficiency).toBeCloseTo(efficiency, 12);
    expect(converted.efficiencyBasis).toBe(efficiencyBasis);
  });
});

describe('the rule and the timer', () => {
  it('are the thirstiest planting, whole minutes and four starts a day unless the plan says otherwise', () => {
    expect(convert({})).toMatchObject({
      rule: { kind: 'thirstiest' },
      timerStepMinutes: 1,
      startsADay: 4,
    });
  });

  it('are as the plan says', () => {
    expect(convert({ startsADay: 2 }).startsADay).toBe(2);
    expect(convert({ rule: { kind: 'planting', planting: 'tomatoes' }, timerStepMinutes: 5 })).toMatchObject({
      rule: { kind: 'planting', plantingId: 'tomatoes' },
      timerStepMinutes: 5,
    });
    expect(convert({ rule: { kind: 'area-weighted' } }).rule).toEqual({ kind: 'area-weighted' });
  });
});

describe('the longest cycle', () => {
  it('is what stands on loam before it runs off, by the line that is the fastest', () => {
    // Tomatoes: 72 gph on 120 ft2 is 72 x 231 / (120 x 144) = 0.9625 in/h. Loam takes 0.35 in/h and holds 0.30 in (Irrigation
    // Association protocol, 2008, from memory): 60 x 0.30 / (0.9625 - 0.35) = 29.39 min. The shrubs' line is slower.
    expect(
      convert({ plantings: [tomatoes(), shrubs({ extent: { kind: 'canopy', count: 9, diameter: 80 } })] })
        .longestCycleMinutes,
    ).toBeCloseTo((60 * 0.3) / (0.9625 - 0.35), 9);
  });

  it('has no end where the soil takes the water as fast as it comes', () => {
    expect(
      convert({ soil: 'sand', plantings: [tomatoes({ wettedShare: 1, extent: { kind: 'area', area: 400 } })] })
        .longestCycleMinutes,
    ).toBe(Number.POSITIVE_INFINITY);
  });

  it('is as the plan says', () => {
    expect(convert({ longestCycleMinutes: 12 }).longestCycleMinutes).toBe(12);
  });

  it('has no end where there is nothing to water', () => {
    expect(convert({ plantings: [] }).longestCycleMinutes).toBe(Number.POSITIVE_INFINITY);
  });
});
