import { describe, expect, it } from 'vitest';
import { fastestRateMmPerHour } from '../../../src/engine/application/fastest-rate.ts';

describe('the fastest application rate of a zone', () => {
  const flow = { from: 0, to: 6, flowLph: 60, efficiency: 0.9, linesLph: [60] };
  const bed = { areaM2: 10, flows: [flow] };

  // One litre on one square metre is one millimetre: 60 L/h on 10 m2 are 6 mm/h, on half of them 12.
  it('is over the ground that lines wet, of the fastest planting and days', () => {
    expect(fastestRateMmPerHour([bed])).toBe(6);
    expect(fastestRateMmPerHour([bed, { ...bed, wettedShare: 0.5 }])).toBe(12);
    expect(fastestRateMmPerHour([{ ...bed, flows: [flow, { ...flow, flowLph: 90 }] }])).toBe(9);
  });

  it('leaves containers out, and is 0 where nothing flows', () => {
    const container = { count: 4, volumeLitres: 20, openingM: 0.3, rainShare: 1 };
    expect(fastestRateMmPerHour([{ ...bed, areaM2: 1, container }])).toBe(0);
    expect(fastestRateMmPerHour([])).toBe(0);
  });
});
