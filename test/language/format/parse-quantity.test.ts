import { describe, expect, it } from 'vitest';
import type { Quantity, UnitSystem } from '../../../src/engine/units.ts';
import { parseQuantity } from '../../../src/language/format/parse-quantity.ts';
import { readerFor } from '../../../src/language/reader.ts';

const read = (text: string, quantity: Quantity, units: UnitSystem, locale = 'en-US') =>
  parseQuantity(text, quantity, readerFor(locale, units));

// 1 in = 25.4 mm, 1 ft = 0.3048 m exactly, 1 gal = 3.785411784 L, 1 psi = 6.894757293168 kPa (NIST SP 811, appendix B).
describe('a typed value of a quantity', () => {
  it.each<[string, Quantity, UnitSystem, number]>([
    ['18', 'spacing', 'us', 18],
    ['18 in', 'spacing', 'us', 18],
    ['18″', 'spacing', 'us', 18],
    ['1.5 ft', 'spacing', 'us', 18],
    ['30 cm', 'spacing', 'us', 30 / 2.54],
    ['1.5 ft', 'spacing', 'metric', 45.72],
    ['0.3 m', 'spacing', 'metric', 30],
    ['3 m', 'length', 'us', 3 / 0.3048],
    ['100 sq ft', 'area', 'us', 100],
    ['100 sq. ft.', 'area', 'us', 100],
    ['10 m²', 'area', 'us', 10 / 0.3048 ** 2],
    ['100 ft2', 'area', 'metric', 100 * 0.3048 ** 2],
    ['20 L', 'volume', 'us', 20 / 3.785411784],
    ['5 gallons', 'volume', 'metric', 5 * 3.785411784],
    ['600 L/h', 'supplyFlow', 'metric', 10],
    ['300 gph', 'supplyFlow', 'us', 5],
    ['2 gpm', 'emitterFlow', 'us', 120],
    ['140 kPa', 'pressure', 'us', 140 / 6.894757293168],
    ['20 psi', 'pressure', 'metric', 20 * 6.894757293168],
    ['16 mm', 'bore', 'us', 16 / 25.4],
    ['0 °C', 'temperature', 'us', 32],
    ['68 F', 'temperature', 'metric', 20],
    ['1.5 cm', 'depth', 'metric', 15],
  ])('%s as %s in a %s plan is %d', (text, quantity, units, value) => {
    const parsed = read(text, quantity, units);
    if (parsed.kind === 'unread') throw new Error(parsed.why);
    expect(Math.abs(parsed.value / value - 1)).toBeLessThanOrEqual(1e-6);
  });

  it('is as typed where the unit is the plan’s own, and a round figure where it is another', () => {
    expect(read('0.1 in', 'spacing', 'us')).toEqual({ kind: 'number', value: 0.1 });
    expect(read('1 ft', 'spacing', 'us')).toEqual({ kind: 'number', value: 12 });
    expect(read('0 gal', 'volume', 'metric')).toEqual({ kind: 'number', value: 0 });
    expect(read('-4 °F', 'temperature', 'metric')).toEqual({ kind: 'number', value: -20 });
  });

  it('is read as the locale writes its numbers', () => {
    expect(read('1,5 ft', 'spacing', 'metric', 'de')).toMatchObject({ kind: 'unread' });
    expect(read('1,204.5 gal', 'volume', 'us')).toEqual({ kind: 'number', value: 1204.5 });
  });

  it.each<[string, Quantity, string]>([
    ['3 gal', 'length', 'no-unit'],
    ['3 furlongs', 'length', 'no-unit'],
    ['north', 'length', 'not-a-number'],
    ['in', 'length', 'not-a-number'],
    ['', 'length', 'not-a-number'],
    ['3 4 ft', 'length', 'not-a-number'],
  ])('is not read from %s as %s: %s', (text, quantity, code) => {
    expect(read(text, quantity, 'us')).toMatchObject({ kind: 'unread', code });
  });
});
