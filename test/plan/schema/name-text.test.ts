/** Against the classes of the Unicode Character Database that the JavaScript engine brings (UAX #44: general category, Default_Ignorable_Code_Point, White_Space). */
import { describe, expect, it } from 'vitest';
import { tryEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Edit } from '../../../src/plan/edits/edit.ts';
import { checkPlan } from '../../../src/plan/reading/check-plan.ts';
import { cleanName, NAME_PATTERN } from '../../../src/plan/schema/name-text.ts';
import { oneBed, tomatoes, zone } from '../../support/small-plans.ts';

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

/** Signs of no width, of which nothing shows. */
const UNSEEN_NAME = '\u200b\u2060';

const faultsOf = (result: ReturnType<typeof checkPlan> | ReturnType<typeof tryEdit>) =>
  result.ok ? [] : result.faults.map(({ path, code }) => [path, code]);

describe('of a name that shows nothing', () => {
  it('each is refused in a document', () => {
    const planting = tomatoes({ name: UNSEEN_NAME });
    const plant = { name: UNSEEN_NAME, botanical: UNSEEN_NAME, class: 'low' };
    const ofPlant = { kind: 'class', class: 'low', plant };
    const plan = {
      ...oneBed({ name: UNSEEN_NAME }),
      identity: UNSEEN_NAME,
      site: { ...oneBed().site, place: UNSEEN_NAME },
      supply: {
        sources: [{ name: UNSEEN_NAME }],
        restrictions: [{ name: UNSEEN_NAME, weekdays: ['mon'] }],
      },
      zones: [{ ...zone({ name: UNSEEN_NAME }), plantings: [planting, { ...planting, id: 'other', need: ofPlant }] }],
      whatIfs: [{ name: UNSEEN_NAME, edits: [{ type: 'set-week-rain', week: '2027-06-07', rain: 1 }] }],
    };
    const faults = faultsOf(checkPlan(plan)).filter(([, code]) => code === 'name');
    expect(faults.map(([path]) => path).sort()).toEqual([
      'identity',
      'name',
      'site.place',
      'supply.restrictions.0.name',
      'supply.sources.0.name',
      'whatIfs.0.name',
      'zones.0.name',
      'zones.0.plantings.0.name',
      'zones.0.plantings.1.name',
      'zones.0.plantings.1.need.plant.botanical',
      'zones.0.plantings.1.need.plant.name',
    ]);
  });

  it.each<[string, Edit]>([
    ['the plan', { type: 'rename-plan', name: UNSEEN_NAME }],
    ['a zone', { type: 'change-zone', zone: 'beds', change: { name: UNSEEN_NAME } }],
    ['a zone that comes', { type: 'add-zone', zone: zone({ id: 'more', name: UNSEEN_NAME, plantings: [] }) }],
    ['a planting', { type: 'change-planting', zone: 'beds', planting: 'tomatoes', change: { name: UNSEEN_NAME } }],
    [
      'a planting that comes',
      { type: 'add-planting', zone: 'beds', planting: tomatoes({ id: 'more', name: UNSEEN_NAME }) },
    ],
    ['a source', { type: 'change-supply', change: { sources: [{ name: UNSEEN_NAME }] } }],
    ['the place', { type: 'change-site', change: { place: UNSEEN_NAME } }],
    [
      'a what-if',
      {
        type: 'set-what-if',
        name: UNSEEN_NAME,
        edits: [{ type: 'close-week', zone: 'beds', week: '2027-06-07', closed: true }],
      },
    ],
  ])('an edit is refused that gives it to %s', (_name, edit) => {
    expect(faultsOf(tryEdit(oneBed(), edit)).map(([, code]) => code)).toContain('name');
  });
});
