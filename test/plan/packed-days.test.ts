import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { UnitSystem } from '../../src/engine/units.ts';
import { packedDays } from '../../src/plan/pack-days.ts';
import {
  convertedDays,
  isPackedFigure,
  MOST_IN_A_DAY_MM,
  MOST_PACKED_DAYS,
  mostFigure,
  PACKED_PATTERN,
  packedFigures,
  unpackedMm,
} from '../../src/plan/packed-days.ts';
import { packedStretch } from '../../src/plan/packed-stretch.ts';
import { law } from '../laws/law.ts';

const other = (units: UnitSystem): UnitSystem => (units === 'us' ? 'metric' : 'us');
const there = (text: string, units: UnitSystem) => convertedDays(text, units, other(units));
const thereAndBack = (text: string, units: UnitSystem) => there(there(text, units), other(units));

describe('days in a row as one text', () => {
  it('are ten-thousandths of an inch, or hundredths of a millimetre; a missing day is -', () => {
    expect([...unpackedMm('0 3500 - 10000', 'us')]).toEqual([0, 8.889999999999999, Number.NaN, 25.4]);
    expect([...unpackedMm('0 890 - 25', 'metric')]).toEqual([0, 8.9, Number.NaN, 0.25]);
  });

  it('of a stretch stand under its first day', () => {
    const stretch = { firstDay: 0, rainMm: Float64Array.of(0, 2.54), etoMm: Float64Array.of(Number.NaN, 5.08) };
    expect(packedStretch(stretch)).toEqual({ from: '1970-01-01', rain: '~T#&b', eto: '~U*`' });
  });

  it.each([
    ['0', true],
    ['-', true],
    ['787401', true],
    ['', false],
    ['-1', false],
    ['1.5', false],
    ['1e3', false],
    ['1234567', false],
    ['٣', false],
  ])('“%s” is a figure of a day: %s', (figure, isOne) => {
    expect(isPackedFigure(figure)).toBe(isOne);
    expect(new RegExp(PACKED_PATTERN, 'u').test(`1 ${figure}`)).toBe(isOne);
  });
});

describe('the same in fewer letters', () => {
  // By hand, digits from # = 0: 254 = 3 x 64 + 62; 433 = 6 x 64 + 49; 3071 is the last of two digits; 200,000 = 48 x 4096 + 53 x 64.
  it.each([
    [[2.54, Number.NaN, 4.326], '~&bU)T', '254 - 433'],
    [[0], '~T#', '0'],
    [[0, 0, 0], '~T%', '0 0 0'],
    [new Array(66).fill(0), '~TcT$', new Array(66).fill('0').join(' ')],
    [[30.71, 30.72, 2000], '~RcS#S#SSX#', '3071 3072 200000'],
  ])('%j', (mm, text, figures) => {
    expect(packedDays(mm)).toBe(text);
    expect(packedFigures(text).join(' ')).toBe(figures);
    for (const units of ['us', 'metric'] as const) {
      expect([...unpackedMm(text, units)]).toEqual(mm.map((depth) => Math.round(100 * depth) / 100));
      expect(there(text, units)).toBe(text);
    }
    expect(new RegExp(PACKED_PATTERN, 'u').test(text)).toBe(true);
  });

  it.each(['~', '~&', '~S#', '~&bé', '~S##', '~Z'])('%s has a figure that cannot be read, or none', (text) => {
    expect(packedFigures(text).every(isPackedFigure) && packedFigures(text).length > 0).toBe(false);
  });

  it('stops at more days than a plan holds', () => {
    expect(packedFigures(`~${'Tc'.repeat(100_000)}`).length).toBeLessThan(MOST_PACKED_DAYS + 100);
  });

  law('are every 0.01 mm as it was', {
    on: fc.array(fc.oneof(fc.constant(Number.NaN), fc.constant(0), fc.integer({ min: 0, max: 200_000 })), {
      minLength: 1,
      maxLength: 300,
    }),
    runs: 300,
    holds: (figures) => {
      const text = packedDays(figures.map((figure) => figure / 100));
      expect(packedFigures(text).map((figure) => (figure === '-' ? Number.NaN : Number(figure)))).toEqual(figures);
    },
  });
});

describe('the greatest figure of a day', () => {
  it.each(['us', 'metric'] as const)('is what a day can have, in %s units', (units) => {
    for (const kind of ['rain', 'eto'] as const) {
      const most = mostFigure(kind, units);
      expect(unpackedMm(String(most), units)[0]).toBeLessThanOrEqual(MOST_IN_A_DAY_MM[kind]);
      expect(unpackedMm(String(most + 1), units)[0]).toBeGreaterThan(MOST_IN_A_DAY_MM[kind]);
      expect(Number(there(String(most), units))).toBeLessThanOrEqual(mostFigure(kind, other(units)));
    }
  });
});

describe('days in the other units', () => {
  it('are as round as they can be', () => {
    // 0.01, 0.25 and 0.35 in; 0.1, 2.5 and 8.9 mm.
    expect(there('100 2500 - 3500', 'us')).toBe('25 635 - 889');
    expect(there('10 250 - 890', 'metric')).toBe('40 984 - 3504');
  });

  law('and back are every 0.01 in as it was', {
    on: fc.array(fc.integer({ min: 0, max: 7874 }), { minLength: 1 }),
    runs: 500,
    holds: (hundredths) => {
      const text = hundredths.map((figure) => 100 * figure).join(' ');
      expect(thereAndBack(text, 'us')).toBe(text);
    },
  });

  law('and back are every 0.01 mm as it was', {
    on: fc.array(fc.oneof(fc.constant('-'), fc.integer({ min: 0, max: 200_000 }).map(String)), { minLength: 1 }),
    runs: 500,
    holds: (figures) => {
      const text = figures.join(' ');
      expect(thereAndBack(text, 'metric')).toBe(text);
    },
  });

  law('are nowhere off by more than half a hundredth of a millimetre', {
    on: fc.tuple(fc.constantFrom<UnitSystem>('us', 'metric'), fc.integer({ min: 0, max: 200_000 })),
    runs: 500,
    holds: ([units, figure]) => {
      const [before = 0] = unpackedMm(String(figure), units);
      const [after = 0] = unpackedMm(there(String(figure), units), other(units));
      expect(Math.abs(after - before)).toBeLessThanOrEqual(0.005 + 1e-9);
      expect(packedFigures(there(String(figure), units)).every(isPackedFigure)).toBe(true);
    },
  });
});
