import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { grossIrrigation, netMmPerMinute, runMinutes } from '../../../src/engine/application/run-time.ts';

describe('run time', () => {
  test('0.50 in net at 0.90 efficiency and 0.9625 in/h: 0.5556 in gross, 34.6 min (derived)', () => {
    expect(grossIrrigation(0.5, 0.9)).toBeCloseTo(0.5556, 4);
    expect(Math.abs(runMinutes(0.5 * 25.4, netMmPerMinute(0.9625 * 25.4, 0.9)) - 34.6)).toBeLessThanOrEqual(0.05);
  });

  test('nothing to apply takes no time, even without emitters', () => {
    expect(runMinutes(0, 0)).toBe(0);
  });

  test.each([0, -1, Number.NaN])('refuses a rate of %d when there is water to apply', (rate) => {
    expect(() => runMinutes(5, rate)).toThrow(new RangeError(`A minute brings ${rate} mm; it must be above 0.`));
  });

  test.each([0, -0.1, 1.01, Number.NaN])('refuses an efficiency of %d', (efficiency) => {
    const refusal = new RangeError(`The efficiency is ${efficiency}; it must be above 0 and at most 1.`);
    expect(() => grossIrrigation(5, efficiency)).toThrow(refusal);
    expect(() => netMmPerMinute(5, efficiency)).toThrow(refusal);
  });

  test('the minutes at that rate bring the gross depth, which is never below the net', () => {
    const some = fc.double({ min: 0.01, max: 200, noNaN: true });
    fc.assert(
      fc.property(some, some, fc.double({ min: 0.05, max: 1, noNaN: true }), (net, rate, efficiency) => {
        const gross = grossIrrigation(net, efficiency);
        expect(gross).toBeGreaterThanOrEqual(net);
        expect((runMinutes(net, netMmPerMinute(rate, efficiency)) * rate) / 60).toBeCloseTo(gross, 8);
        expect(gross * efficiency).toBeCloseTo(net, 10);
      }),
    );
  });
});
