import { expect, it } from 'vitest';
import { LEAST_PRESSURE_KPA, NOMINAL_PRESSURE_KPA } from '../../../src/engine/line/usual-pressures.data.ts';

// 1 psi = 6.894757 kPa: NIST SP 811 (2008), Appendix B.8. That 10 and 20 psi are usual: trade tables, from memory.
it('a compensating emitter wants 10 psi, a plain one is labelled at 20', () => {
  expect(LEAST_PRESSURE_KPA).toBeCloseTo(68.94757, 4);
  expect(NOMINAL_PRESSURE_KPA).toBeCloseTo(137.89515, 4);
});
