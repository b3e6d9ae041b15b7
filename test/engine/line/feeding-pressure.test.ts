import { describe, expect, it } from 'vitest';
import { type Feed, feedingPressure } from '../../../src/engine/line/feeding-pressure.ts';
import { pipeLossKpa } from '../../support/pipe-loss.ts';

const tube = { lengthM: 30, insideDiameterMm: 15.24, riseMPerM: 0 };
const feedingPressureKpa = (feed: Feed) => feedingPressure(feed).kpa;
const steady = (lph: number) => () => lph;

describe('the pressure behind solid lines', () => {
  it('is the source’s where there are none, or none has a length', () => {
    expect(feedingPressureKpa({ sourceKpa: 200, solids: [], flowLphAt: steady(500) })).toBe(200);
    const unknown = { insideDiameterMm: 15.24, riseMPerM: 0.5 };
    expect(feedingPressureKpa({ sourceKpa: 200, solids: [unknown], flowLphAt: steady(500) })).toBe(200);
  });

  it('is less by the friction of each, one behind the other', () => {
    const lost = pipeLossKpa({ ...tube, hazenWilliamsC: 130, flowLph: 500 });
    const lostIn140 = pipeLossKpa({ ...tube, hazenWilliamsC: 140, flowLph: 500 });
    const one = feedingPressureKpa({ sourceKpa: 200, solids: [tube], flowLphAt: steady(500) });
    expect([lost, lostIn140].some((loss) => Math.abs(200 - loss - one) < 1e-9)).toBe(true);
    const two = feedingPressureKpa({ sourceKpa: 200, solids: [tube, tube], flowLphAt: steady(500) });
    expect(200 - two).toBeCloseTo(2 * (200 - one), 9);
  });

  it('is less by the climb, more by the fall, and nothing where the climb uses it up', () => {
    const at = (riseMPerM: number) =>
      feedingPressureKpa({ sourceKpa: 20, solids: [{ ...tube, riseMPerM }], flowLphAt: steady(0) });
    expect(at(0.05)).toBeCloseTo(20 - 1.5 * 9.80665, 9);
    expect(at(-0.05)).toBeCloseTo(20 + 1.5 * 9.80665, 9);
    expect(at(0.1)).toBe(0);
  });

  it('is where what flows and what is lost agree', () => {
    const thin = { ...tube, insideDiameterMm: 5 };
    const flowLphAt = (kpa: number) => 100 * Math.sqrt(kpa);
    const kpa = feedingPressureKpa({ sourceKpa: 200, solids: [thin], flowLphAt });
    const loss = (c: number) => pipeLossKpa({ ...thin, hazenWilliamsC: c, flowLph: flowLphAt(kpa) });
    expect([130, 140].some((c) => Math.abs(200 - loss(c) - kpa) < 1e-6)).toBe(true);
    expect(kpa).toBeLessThan(100);
  });

  it('shares what the tubes let through among lines that would drain them faster by their fall', () => {
    const thin = { ...tube, insideDiameterMm: 5 };
    // A fall of 1 m behind it drains 100 L/h with no pressure at all at the inlet, and a little more with some.
    const flowLphAt = (kpa: number) => (kpa > 0 ? 100 * Math.sqrt(1 + kpa / 9.80665) : 0);
    const at = (sourceKpa: number) => feedingPressure({ sourceKpa, solids: [thin], flowLphAt });
    const lossOf = (lph: number) => pipeLossKpa({ ...thin, hazenWilliamsC: 130, flowLph: lph });
    const few = at(50);
    expect(few.kpa).toBeCloseTo(0, 9);
    expect(few.share).toBeLessThan(0.9);
    expect(lossOf(few.share * 100)).toBeCloseTo(50, 9);
    // As much as it drains: there the two rules meet.
    const enough = lossOf(100);
    expect(at(0.999999 * enough).share).toBeCloseTo(1, 5);
    expect(at(1.000001 * enough)).toEqual({ kpa: expect.closeTo(0, 3), share: 1 });
    expect(at(2 * enough).kpa).toBeGreaterThan(0.1);
  });
});
