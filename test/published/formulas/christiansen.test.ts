import { describe, expect, it } from 'vitest';
import { christiansenF, christiansenHalfSpacingF, christiansenSum } from './christiansen.ts';

describe("Christiansen's F (1942, Calif. Agr. Exp. Sta. Bull. 670)", () => {
  it.each([
    [2, 0.639],
    [5, 0.457],
    [10, 0.402],
    [20, 0.376],
    [50, 0.361],
    [100, 0.356],
  ])('%s outlets: %s, as printed in tables for m 1.85 (from memory)', (outlets, printed) => {
    expect(christiansenF(outlets, 1.85)).toBeCloseTo(printed, 3);
    expect(christiansenF(outlets)).toBeCloseTo(printed, 3);
  });

  it.each([
    [1, 1],
    [2, 0.6385],
    [3, 0.534],
    [4, 0.485],
    [5, 0.457],
    [6, 0.438],
    [10, 0.402],
    [20, 0.376],
    [50, 0.361],
    [100, 0.356],
  ])('%s outlets: the exact sum k^m / n^(m+1) is %s', (outlets, exact) => {
    expect(Math.abs(christiansenSum(outlets) - exact)).toBeLessThan(0.0006);
  });

  it('one outlet: the table prints 1.000, the series gives 1.0045, the sum exactly 1', () => {
    expect(christiansenF(1)).toBeCloseTo(1.0045, 4);
    expect(christiansenSum(1)).toBe(1);
  });

  it('six outlets: some books print 0.435; formula and sum both give 0.438-0.439', () => {
    for (const F of [christiansenF(6, 1.85), christiansenF(6), christiansenSum(6, 1.85), christiansenSum(6)]) {
      expect(F).toBeGreaterThan(0.4375);
      expect(F).toBeLessThan(0.4395);
    }
  });

  it('formula and sum agree within 0.5 % everywhere and tend to 1/(m+1) = 0.3506', () => {
    for (let outlets = 1; outlets <= 300; outlets += 1) {
      expect(Math.abs(christiansenF(outlets) / christiansenSum(outlets) - 1)).toBeLessThan(0.005);
    }
    expect(christiansenF(1e9)).toBeCloseTo(0.3506, 4);
  });

  it('first outlet at half a spacing: 0.519 for two outlets (Keller and Bliesner 1990, from memory)', () => {
    expect(christiansenHalfSpacingF(2)).toBeCloseTo(0.519, 3);
  });

  it.each([2, 5, 10, 50])(
    'first outlet at half a spacing, %s outlets: within half a percent of the sum over its own reaches',
    (outlets) => {
      let sum = 0.5;
      for (let carried = 1; carried < outlets; carried += 1) sum += (carried / outlets) ** 1.852;
      expect(Math.abs(christiansenHalfSpacingF(outlets) / (sum / (outlets - 0.5)) - 1)).toBeLessThan(0.005);
    },
  );

  it('a line without outlets is refused', () => {
    for (const of of [christiansenF, christiansenSum, christiansenHalfSpacingF]) {
      expect(() => of(0)).toThrow('The number of outlets is 0; it must be 1 or more.');
    }
  });
});
