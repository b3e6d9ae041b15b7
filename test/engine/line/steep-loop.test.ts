/** Long loops of close emitters with a steep law: a guess of their pressure may pass all numbers, and the answer must not. */
import { describe, expect, it } from 'vitest';
import { lateral } from '../../../src/engine/line/lateral.ts';
import { noticesOf } from '../../../src/explain/notices/notices-of.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { oneBed, tomatoes, zone } from '../../support/small-plans.ts';

const LOOP = {
  topology: 'loop',
  outlets: 2000,
  spacingM: 0.1524,
  insideDiameterMm: 13.6,
  inletPressureKpa: 170,
  emittersPerOutlet: 6,
} as const;

describe('a loop of 1,000 ft with an emitter every inch', () => {
  it.each([0.5, 0.75, 0.9, 1])('has plain figures at exponent %s, the same from both ends', (exponent) => {
    const emitter = { kind: 'plain', nominalFlowLph: 2.27, nominalPressureKpa: 100, exponent } as const;
    const { pressuresKpa, flowsLph, inletFlowLph, uniformity } = lateral({ ...LOOP, emitter });
    for (const [outlet, pressure] of pressuresKpa.entries()) {
      expect(pressure).toBeGreaterThanOrEqual(0);
      expect(pressure).toBeLessThanOrEqual(LOOP.inletPressureKpa);
      expect(pressure).toBeCloseTo(pressuresKpa[LOOP.outlets - 1 - outlet] as number, 6);
    }
    expect(flowsLph.reduce((sum, flow) => sum + flow, 0)).toBeCloseTo(inletFlowLph, 6);
    expect(inletFlowLph).toBeGreaterThan(0);
    expect(uniformity).toBeGreaterThanOrEqual(0);
    expect(uniformity).toBeLessThan(0.5);
  });

  it('is told of as too long', () => {
    const line = {
      kind: 'dripline',
      flow: 0.6,
      spacing: 1,
      layout: { kind: 'length', length: 1000 },
      topology: 'loop',
      emitter: { kind: 'plain', exponent: 1 },
    } as const;
    const plan = oneBed({ zones: [zone({ plantings: [tomatoes({ lines: [line] })] })] });
    expect(noticesOf(computeSeason(plan)).map(({ kind }) => kind)).toContain('line-too-long');
  });
});
