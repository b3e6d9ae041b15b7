import { describe, expect, it } from 'vitest';
import { FLOW_VARIATION_LIMIT, flowVariation } from '../../../src/engine/line/flow-variation.ts';

describe('flow variation, (most - least) / most', () => {
  it('is 10.6 % where an orifice has 20 % less pressure, a little over the usual allowance of 10 % (Keller and Karmeli 1975)', () => {
    const variation = flowVariation([1, Math.sqrt(0.9), Math.sqrt(0.8)]);
    expect(variation).toBeCloseTo(0.106, 3);
    expect(FLOW_VARIATION_LIMIT).toBe(0.1);
  });

  it('is 1 where one emitter is dry, and 0 where all are or none is there', () => {
    expect(flowVariation([2, 0])).toBe(1);
    expect(flowVariation([0, 0])).toBe(0);
    expect(flowVariation([])).toBe(0);
  });
});
