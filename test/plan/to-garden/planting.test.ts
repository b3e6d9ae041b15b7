import { describe, expect, it } from 'vitest';
import { dayNumber, isoDate } from '../../../src/engine/calendar.ts';
import type { PlanNeed, PlanPlanting } from '../../../src/plan/schema/plan-schema.ts';
import { plantingOf } from '../../../src/plan/to-garden/planting.ts';
import { shrubs, tomatoes } from '../../support/small-plans.ts';

const season = {
  units: 'us',
  pressures: [],
  seasonFirst: dayNumber('2027-04-05'),
  seasonLast: dayNumber('2027-10-31'),
  frozenMonths: 0,
  soil: { texture: 'loam', availableWater: 0.155 },
} as const;
const convert = (planting: PlanPlanting) => plantingOf(planting, season);
const days = (planting: PlanPlanting) => {
  const { from, to } = convert(planting);
  return [isoDate(from), isoDate(to)];
};

describe('the ground of a planting', () => {
  it('is its area: 120 ft2 are 11.148 m2', () => {
    const planting = convert(tomatoes());
    expect(planting.areaM2).toBeCloseTo(120 * 0.09290304, 12);
    expect(planting.plants).toBeUndefined();
  });

  it('or its canopies as circles: 9 of 36 in are 9 x pi/4 x 0.9144^2 m2', () => {
    const planting = convert(shrubs());
    expect(planting.areaM2).toBeCloseTo((9 * Math.PI * 0.9144 ** 2) / 4, 12);
    expect(planting.plants).toBe(9);
  });

  it('or a bed: 12 x 4 ft are 48 square feet', () => {
    const planting = convert(tomatoes({ extent: { kind: 'bed', length: 12, width: 4 } }));
    expect(planting.areaM2).toBeCloseTo(48 * 0.09290304, 12);
  });

  // 18 in from row to row: common practice, no source.
  it('or rows, each with half of what lies between: 3 of 12 ft at 18 in are 54 square feet', () => {
    const planting = convert(tomatoes({ extent: { kind: 'rows', rows: 3, length: 12 } }));
    expect(planting.areaM2).toBeCloseTo(54 * 0.09290304, 12);
    const close = convert(tomatoes({ extent: { kind: 'rows', rows: 3, length: 12, apart: 12 } }));
    expect(close.areaM2).toBeCloseTo(36 * 0.09290304, 12);
  });
});

describe('days in the ground', () => {
  const lettuce: PlanNeed = { kind: 'crop', crop: 'lettuce', plantedOn: '2027-05-01' };
  const apples: PlanNeed = { kind: 'crop', crop: 'apple-cherry-pear', plantedOn: '2020-03-15' };

  it.each<[string, PlanPlanting, [string, string]]>([
    ['landscape plants: the whole season', shrubs(), ['2027-04-05', '2027-10-31']],
    ['a crop that stays: the whole season', shrubs({ need: apples }), ['2027-04-05', '2027-10-31']],
    // FAO-56 Table 11: 20 + 30 + 15 + 10 = 75 days, the first of them 1 May.
    [
      'an annual crop: from planting to the end of its last stage',
      shrubs({ need: lettuce }),
      ['2027-05-01', '2027-07-14'],
    ],
    ['as the plan says', shrubs({ inGround: { from: '2027-05-05', to: '2027-06-05' } }), ['2027-05-05', '2027-06-05']],
    [
      'a crop sown under cover and set out later',
      shrubs({ need: lettuce, inGround: { from: '2027-05-20' } }),
      ['2027-05-20', '2027-07-14'],
    ],
  ])('%s', (_name, planting, expected) => {
    expect(days(planting)).toEqual(expected);
  });

  it('its lines lie from its first day on, in the order of their days', () => {
    const lines = [{ kind: 'solid', from: '2027-07-01' }, { kind: 'solid' }] as const;
    const planting = convert(shrubs({ inGround: { from: '2027-05-05' }, lines }));
    expect(planting.lines.map(({ from }) => isoDate(from))).toEqual(['2027-05-05', '2027-07-01']);
  });
});

describe('what a planting uses', () => {
  const coefficient = (need: PlanNeed, inGround?: PlanPlanting['inGround']) =>
    convert(shrubs({ need, ...(inGround && { inGround }) })).coefficient;

  it('by class: the middle of the published range', () => {
    // Costello, Matheny and Clark (2000): low 0.10 to 0.30.
    expect(coefficient({ kind: 'class', class: 'low' })).toMatchObject({
      kind: 'landscape',
      name: { en: 'Low' },
      factor: 0.2,
      density: 1,
      microclimate: 1,
      source: expect.stringContaining('Costello'),
    });
  });

  it('by type', () => {
    // ANSI/ASABE S623: annual flowers 0.8.
    const flowers = { kind: 'type', type: 'annual-flowers', density: 1.1, microclimate: 0.8 } as const;
    expect(coefficient(flowers)).toMatchObject({ factor: 0.8, density: 1.1, microclimate: 0.8 });
  });

  it('by a factor that was set, which no table is the source of', () => {
    expect(coefficient({ kind: 'class', class: 'low', factor: 0.28 })).toMatchObject({
      factor: 0.28,
      source: undefined,
    });
  });

  it('by crop: FAO-56 Tables 11 and 12', () => {
    expect(coefficient({ kind: 'crop', crop: 'tomato', plantedOn: '2027-05-10' })).toMatchObject({
      kind: 'crop',
      name: { en: 'Tomato' },
      plantedOn: dayNumber('2027-05-10'),
      stageDays: [35, 40, 50, 30],
      kcInitial: 0.6,
      kcMid: 1.15,
      kcEnd: 0.8,
      source: expect.stringContaining('Table 12'),
      stagesSource: expect.stringContaining('Table 11'),
    });
  });

  it('by a crop’s own stages and coefficients', () => {
    const need: PlanNeed = {
      kind: 'crop',
      crop: 'tomato',
      plantedOn: '2027-05-10',
      stages: { initial: 1, development: 2, mid: 3, late: 4 },
      coefficients: { initial: 0.5, mid: 1.2, end: 0.7 },
    };
    expect(coefficient(need)).toMatchObject({ stageDays: [1, 2, 3, 4], kcInitial: 0.5, kcMid: 1.2, kcEnd: 0.7 });
    expect(coefficient(need)).toMatchObject({ source: undefined, stagesSource: undefined });
  });

  it('an annual that stands longer than its stages has a longer late one, since that ends with harvest', () => {
    const need: PlanNeed = { kind: 'crop', crop: 'tomato', plantedOn: '2027-05-10' };
    // 10 May to 15 October are 159 days; 35 + 40 + 50 of them are over before the last stage.
    expect(coefficient(need, { to: '2027-10-15' })).toMatchObject({ stageDays: [35, 40, 50, 34] });
    expect(coefficient(need, { to: '2027-08-01' })).toMatchObject({ stageDays: [35, 40, 50, 30] });
  });

  it('a crop that stays grows anew each year from the day that is written, in whichever year', () => {
    expect(coefficient({ kind: 'crop', crop: 'apple-cherry-pear', plantedOn: '2020-03-15' })).toMatchObject({
      plantedOn: dayNumber('2020-03-15'),
      perennial: true,
    });
    expect(coefficient({ kind: 'crop', crop: 'tomato', plantedOn: '2027-05-10' })).not.toHaveProperty('perennial');
  });

  it('new plants use another share until they are settled', () => {
    const establishing = { until: '2027-06-30', factor: 1.4 };
    expect(convert(shrubs({ establishing })).establishing).toEqual({ until: dayNumber('2027-06-30'), factor: 1.4 });
  });
});

describe('roots and the way of watering', () => {
  it.each<[string, PlanPlanting, number, number, boolean]>([
    // FAO-56 Table 22: tomato 0.7-1.5 m, p 0.40; the footnote gives the smaller depth for scheduling.
    ['a crop: the smaller published depth and p', tomatoes(), 0.7, 0.4, true],
    ['turf: the crop table too', shrubs({ need: { kind: 'type', type: 'turf-cool-season' } }), 0.5, 0.4, false],
    // Common practice, no source: shrubs 12-24 in, half of the water.
    ['low-water plants: shrubs', shrubs(), 18 * 0.0254, 0.5, false],
    ['annual flowers', shrubs({ need: { kind: 'type', type: 'annual-flowers' } }), 9 * 0.0254, 0.35, false],
    ['what is typed', shrubs({ rootDepth: 20, allowedDepletion: 0.45 }), 20 * 0.0254, 0.45, false],
  ])('%s', (_name, planting, rootDepthM, allowedDepletion, adjustsDepletion) => {
    const converted = convert(planting);
    expect(converted.rootZone.depthM).toBeCloseTo(rootDepthM, 12);
    expect(converted.rootZone).toMatchObject({ allowedDepletion, adjustsDepletion });
  });

  it.each<[string, PlanPlanting, 'keep' | 'refill']>([
    ['a crop keeps', tomatoes({ shutOff: true }), 'keep'],
    ['landscape plants behind a shut-off are refilled', shrubs(), 'refill'],
    ['landscape plants without one keep', shrubs({ shutOff: false }), 'keep'],
    ['what is chosen wins', shrubs({ watering: 'keep' }), 'keep'],
  ])('%s', (_name, planting, watering) => {
    expect(convert(planting).watering).toBe(watering);
  });

  it('soil is full at the start, and watering leaves room for rain, unless the plan says otherwise', () => {
    expect(convert(shrubs()).rootZone).toMatchObject({ targetDepletion: 0.3, startDepletion: 0 });
    expect(convert(shrubs({ target: 0.1, startDepletion: 1 })).rootZone).toMatchObject({
      targetDepletion: 0.1,
      startDepletion: 1,
    });
  });
});

it('every class, type and crop of the tables can be converted', async () => {
  const { CROP_IDS } = await import('../../../src/engine/plants/crops.data.ts');
  const { PLANT_TYPE_IDS } = await import('../../../src/engine/plants/plant-types.data.ts');
  const { WATER_USE_CLASS_IDS } = await import('../../../src/engine/plants/water-use-classes.data.ts');
  const needs: readonly PlanNeed[] = [
    ...WATER_USE_CLASS_IDS.map((id) => ({ kind: 'class', class: id }) as const),
    ...PLANT_TYPE_IDS.map((id) => ({ kind: 'type', type: id }) as const),
    ...CROP_IDS.map((id) => ({ kind: 'crop', crop: id, plantedOn: '2027-05-01' }) as const),
  ];
  for (const need of needs) {
    const { rootZone, coefficient, from, to } = convert(shrubs({ need }));
    expect(rootZone.depthM).toBeGreaterThan(0.1);
    expect(rootZone.allowedDepletion).toBeGreaterThan(0.1);
    expect(coefficient.name.en).not.toBe('');
    expect(to).toBeGreaterThan(from);
  }
});
