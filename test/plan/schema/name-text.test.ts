/** Against the classes of the Unicode Character Database that the JavaScript engine brings (UAX #44: general category, Default_Ignorable_Code_Point, White_Space). */
import { describe, expect, it } from 'vitest';
import { checkPlan } from '../../../src/plan/reading/check-plan.ts';
import { cleanName, NAME_PATTERN } from '../../../src/plan/schema/name-text.ts';
import { oneBed, zone } from '../../support/small-plans.ts';

const ASSIGNED = Array.from({ length: 0x110000 }, (_, code) => code).filter(
  (code) => (code < 0xd800 || code > 0xdfff) && !/\p{Cn}/u.test(String.fromCodePoint(code)),
);

const hex = (code: number) => code.toString(16);

describe('a name', () => {
  it('holds no control and no separator of lines, wherever one stands', () => {
    const taken = ASSIGNED.filter((code) => /[\p{Cc}\p{Zl}\p{Zp}]/u.test(String.fromCodePoint(code))).filter((code) =>
      ['Beds', ''].some((end) => NAME_PATTERN.test(`Beds${String.fromCodePoint(code)}${end}`)),
    );
    expect(taken.map(hex)).toEqual([]);
  });

  it('is none where nothing of it shows, and holds any sign beside one that shows', () => {
    const unseen = /[\p{Default_Ignorable_Code_Point}\p{White_Space}\u2800\ufff9-\ufffb]/u;
    const wrong = ASSIGNED.filter((code) => {
      const sign = String.fromCodePoint(code);
      return !/[\p{Cc}\p{Zl}\p{Zp}]/u.test(sign) && NAME_PATTERN.test(sign + sign) === unseen.test(sign);
    });
    expect(wrong.map(hex)).toEqual([]);
  });

  it.each(['Beds', '花壇', 'ערוגה 3', 'می‌خواهم', '👩‍🌾', '\u202eBeds', '=1+1', ' Beds '])('may be %j', (name) => {
    expect(checkPlan(oneBed({ zones: [zone({ name })] }))).toMatchObject({ ok: true });
    expect(cleanName(name)).toBe(name.trim());
  });

  it.each([
    '',
    ' ',
    '\u200b\u200d',
    '\u00a0\u3000',
    '\u2800',
    '\u{e0020}',
    'Beds\t=1+1',
    'Beds\r\nby the wall',
    'Beds\u0000',
  ])('that is %j is refused with its place', (name) => {
    const result = checkPlan(oneBed({ zones: [zone({ name })] }));
    expect(result.ok ? [] : result.faults.map(({ path, code }) => [path, code])).toEqual([['zones.0.name', 'name']]);
  });

  it('is read without delay, however long it is', () => {
    const began = performance.now();
    expect(NAME_PATTERN.test('\u200b'.repeat(1_000_000))).toBe(false);
    expect(cleanName(' \t'.repeat(200_000))).toBe('');
    expect(cleanName(`${' '.repeat(500_000)}.`)).toBe('.');
    expect(performance.now() - began).toBeLessThan(1000);
  });
});
