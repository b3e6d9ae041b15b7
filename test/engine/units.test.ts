import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromSi, QUANTITIES, toSi, type UnitSystem, unitOf } from '../../src/engine/units.ts';

const SYSTEMS: readonly UnitSystem[] = Object.freeze(['us', 'metric'] as const);

describe('units of both systems', () => {
  it.each([
    ['depth', 'in', 'mm', 'mm'],
    ['rate', 'in/h', 'mm/h', 'mm/h'],
    ['availableWater', 'in/ft', 'mm/m', 'mm/m'],
    ['length', 'ft', 'm', 'm'],
    ['elevation', 'ft', 'm', 'm'],
    ['height', 'ft', 'm', 'm'],
    ['spacing', 'in', 'cm', 'm'],
    ['diameter', 'in', 'cm', 'm'],
    ['rootDepth', 'in', 'cm', 'm'],
    ['bore', 'in', 'mm', 'mm'],
    ['area', 'ft²', 'm²', 'm²'],
    ['volume', 'gal', 'L', 'L'],
    ['waterPerArea', 'gal/ft²', 'L/m²', 'L/m²'],
    ['emitterFlow', 'gph', 'L/h', 'L/h'],
    ['supplyFlow', 'gpm', 'L/min', 'L/min'],
    ['pressure', 'psi', 'kPa', 'kPa'],
    ['temperature', '°F', '°C', '°C'],
    ['windSpeed', 'mph', 'm/s', 'm/s'],
  ] as const)('%s is %s or %s, and %s inside', (quantity, us, metric, si) => {
    expect(unitOf(quantity, 'us').name).toBe(us);
    expect(unitOf(quantity, 'metric').name).toBe(metric);
    expect(SYSTEMS.map((system) => unitOf(quantity, system).siName)).toEqual([si, si]);
  });

  it('every kind of quantity is listed once', () => {
    expect(QUANTITIES).toHaveLength(19);
    expect(new Set(QUANTITIES).size).toBe(19);
  });

  it('a unit cannot be changed by a caller', () => {
    expect(Object.isFrozen(unitOf('volume', 'us'))).toBe(true);
  });
});

describe('conversion', () => {
  // NIST SP 811 (2008), appendix B: factors printed to seven digits, exact ones in full.
  it.each([
    ['an inch is 25.4 mm (exact)', 1, 'depth', 25.4],
    ['a foot is 0.3048 m (exact)', 1, 'length', 0.3048],
    ['a square foot is 0.09290304 m2 (exact)', 1, 'area', 0.09290304],
    ['a US liquid gallon is 3.785412 L', 1, 'volume', 3.785412],
    ['a gallon a minute is 3.785412 L/min', 1, 'supplyFlow', 3.785412],
    ['a gallon on a square foot is 231/144 in, 40.746 L on a square metre', 1, 'waterPerArea', (231 / 144) * 25.4],
    ['a gallon an hour is 3.785412 L/h', 1, 'emitterFlow', 3.785412],
    ['a psi is 6.894757 kPa', 1, 'pressure', 6.894757],
    ['a mile an hour is 0.44704 m/s (exact)', 1, 'windSpeed', 0.44704],
    ['12 in of emitter spacing are 0.3048 m (exact)', 12, 'spacing', 0.3048],
    ['freezing is 32 °F', 32, 'temperature', 0],
    ['boiling is 212 °F', 212, 'temperature', 100],
    ['both scales meet at 40 below', -40, 'temperature', -40],
  ] as const)('%s', (_name, value, quantity, si) => {
    expect(Math.abs(toSi(value, quantity, 'us') - si)).toBeLessThanOrEqual(5e-7 * Math.max(1, Math.abs(si)));
  });

  it('a gallon is 231 cubic inches exactly', () => {
    expect(unitOf('volume', 'us').factor).toBeCloseTo(231 * 0.254 ** 3, 14);
  });

  it('an inch of water in a foot of soil is 83.3 mm in a metre', () => {
    expect(toSi(1, 'availableWater', 'us')).toBeCloseTo(1000 / 12, 10);
  });

  it('a metric plan states spacing, canopy and root depth in centimetres', () => {
    expect(toSi(30, 'spacing', 'metric')).toBeCloseTo(0.3, 15);
    expect(fromSi(1.5, 'diameter', 'metric')).toBeCloseTo(150, 12);
    expect(toSi(60, 'rootDepth', 'metric')).toBeCloseTo(0.6, 15);
  });

  it('not a number stays not a number', () => {
    expect(toSi(Number.NaN, 'volume', 'us')).toBeNaN();
    expect(fromSi(Number.NaN, 'temperature', 'us')).toBeNaN();
  });

  it('there and back gives what was typed, for every quantity in both systems', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...QUANTITIES),
        fc.constantFrom(...SYSTEMS),
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        (quantity, system, typed) => {
          const back = fromSi(toSi(typed, quantity, system), quantity, system);
          // Near zero the shift between temperature scales costs absolute digits, so the scale there is one degree.
          const scale = quantity === 'temperature' ? Math.max(1, Math.abs(typed)) : Math.abs(typed);
          expect(Math.abs(back - typed)).toBeLessThanOrEqual(1e-12 * scale + 1e-300);
        },
      ),
      { numRuns: 2000 },
    );
  });
});

describe('depth times area is volume', () => {
  // Gallons from square feet and inches through the engine's units: 1 mm on 1 m2 is 1 L.
  const gallons = (feet2: number, inches: number): number =>
    fromSi(toSi(inches, 'depth', 'us') * toSi(feet2, 'area', 'us'), 'volume', 'us');

  // Exact arithmetic of the definitions: 144 in3 / 231, 1728 in3 / 231, 43,560 ft2 x 144 in3 / 231.
  it.each([
    ['an inch on a square foot is 0.62338 gal', 1, 1, 144 / 231, 0.62338, 5e-6],
    ['a cubic foot is 7.48052 gal', 1, 12, 1728 / 231, 7.48052, 5e-6],
    ['an inch on an acre is 27,154.29 gal', 43_560, 1, (43_560 * 144) / 231, 27_154.29, 5e-3],
  ] as const)('%s', (_name, feet2, inches, exact, printed, half) => {
    expect(Math.abs(gallons(feet2, inches) - exact)).toBeLessThanOrEqual(1e-12 * exact);
    expect(Math.abs(gallons(feet2, inches) - printed)).toBeLessThanOrEqual(half);
  });

  it('a millimetre on a square metre is a litre', () => {
    const litres = toSi(1, 'depth', 'metric') * toSi(1, 'area', 'metric');
    expect(fromSi(litres, 'volume', 'metric')).toBe(1);
  });
});
