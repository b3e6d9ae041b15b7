import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DEFAULTS } from '../../../src/plan/defaults.ts';
import { checkPlan } from '../../../src/plan/reading/check-plan.ts';
import { readPlan } from '../../../src/plan/reading/read-plan.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { changesSince1, from1 } from '../../../src/plan/versions/from-1.ts';
import { metricGarden, mixedGarden, oneBed, tomatoes, zone } from '../../support/small-plans.ts';

/** As version 1 wrote it. */
const asVersion1 = (plan: object) => ({ ...plan, version: 1 });

const OTHER_DEFAULTS = { rainMethod: 'balance', target: 0.3 } as const;

const changesOf = (plan: object, usual: Parameters<typeof changesSince1>[1] = OTHER_DEFAULTS) =>
  changesSince1(asVersion1(plan) as Readonly<Record<string, unknown>>, usual);

describe('a plan of version 1', () => {
  it.each([
    ['one bed', oneBed()],
    ['a mixed garden', mixedGarden()],
    ['a metric garden', metricGarden()],
  ])('%s: is the same plan in version 2, whatever it says', (_name, plan) => {
    expect(checkPlan(asVersion1(plan))).toMatchObject({ ok: true, plan, migration: { from: 1 } });
  });

  it.each(['lantern-lane', 'mixed-border'])('%s, as 0.1.0 showed it, is read', (name) => {
    const text = readFileSync(new URL(`../../../demo/plans/${name}.runnel.json`, import.meta.url), 'utf8');
    const { version: _version, ...plan } = JSON.parse(text);
    const result = readPlan(JSON.stringify(asVersion1(plan)));
    expect(result).toMatchObject({ ok: true, plan: { version: 2, name: plan.name }, migration: { from: 1 } });
  });

  it('is told of the defaults of today', () => {
    const result = checkPlan(asVersion1(oneBed()));
    expect(result.ok && result.migration?.changes).toEqual([
      ...changesOf(oneBed(), DEFAULTS),
      { code: 'ground-wetted', values: { plantings: 1 } },
      { code: 'roots-grow', values: { plantings: 1 } },
    ]);
  });
});

describe('what is told', () => {
  it('is another usual way of counting rain, where the plan names none', () => {
    const told = { code: 'rain-method', values: { from: 'tr21', to: 'balance' } };
    expect(changesOf(oneBed())).toContainEqual(told);
    const site = { ...oneBed().site, rain: { method: 'tr21' as const } };
    expect(changesOf(oneBed({ site }))).not.toContainEqual(told);
    expect(changesOf(oneBed(), { ...OTHER_DEFAULTS, rainMethod: 'tr21' })).not.toContainEqual(told);
  });

  it('is another usual target, with how many plantings name none', () => {
    const plantings = [tomatoes(), tomatoes({ id: 'more' }), tomatoes({ id: 'full', target: 0 })];
    const told = { code: 'target-depletion', values: { plantings: 2, from: 0, to: 0.3 } };
    expect(changesOf(oneBed({ zones: [zone({ plantings })] }))).toContainEqual(told);
    expect(changesOf(oneBed({ zones: [] })).map(({ code }) => code)).toEqual(['rain-method']);
    expect(changesOf(oneBed(), { ...OTHER_DEFAULTS, target: 0 }).map(({ code }) => code)).toEqual(['rain-method']);
  });

  it('is how many rain totals count as read through the last day of their week', () => {
    const log = { weeks: { '2027-06-07': { rain: 1 }, '2027-06-14': { eto: 1 }, '2027-06-21': { rain: 0 } } };
    expect(changesOf(oneBed({ log }))).toContainEqual({ code: 'rain-read-through', values: { weeks: 2 } });
  });

  it('is how many lines a later one of their planting ended: each has its last day now, wherever it stands in the list', () => {
    const lines = [
      { kind: 'solid' as const, from: '2027-07-01' },
      { kind: 'solid' as const },
      { kind: 'solid' as const, from: '2027-06-01' },
    ];
    const plan = oneBed({ zones: [zone({ plantings: [tomatoes({ lines }), tomatoes({ id: 'more' })] })] });
    const result = checkPlan(asVersion1(plan));
    if (!result.ok) throw new Error(JSON.stringify(result.faults));
    expect(result.migration?.changes).toContainEqual({ code: 'lines-ended', values: { lines: 2 } });
    expect(result.plan.zones[0]?.plantings[0]?.lines.map(({ to }) => to)).toEqual([
      undefined,
      '2027-05-31',
      '2027-06-30',
    ]);
    expect(result.plan.zones[0]?.plantings[1]?.lines).toEqual(tomatoes().lines);
  });

  it('is in how many plantings emitters took over from a day on, with another share of the ground wetted', () => {
    const drip = { kind: 'point' as const, flow: 1, count: 4 };
    const anew = [drip, { ...drip, count: 8, from: '2027-07-01' }];
    const spray = [{ kind: 'spray' as const, flow: 10, count: 2 }];
    const told = (lines: readonly (readonly object[])[]) => {
      const plantings = lines.map((each, index) => tomatoes({ id: `p${index}`, lines: each as typeof anew }));
      const result = checkPlan(asVersion1(oneBed({ zones: [zone({ plantings })] })));
      if (!result.ok) throw new Error(JSON.stringify(result.faults));
      return result.migration?.changes.filter(({ code }) => code === 'wetted-anew');
    };
    expect(told([anew, [drip], anew])).toEqual([{ code: 'wetted-anew', values: { plantings: 2 } }]);
    expect(told([[drip], spray, [...spray, { ...spray[0], from: '2027-07-01' }]])).toEqual([]);
  });

  it('a line without a day lies from its planting’s first: a crop’s planting day, or the first in the ground', () => {
    const lines = [{ kind: 'solid' as const }, { kind: 'solid' as const, from: '2027-05-01' }];
    const lastDays = (change: Parameters<typeof tomatoes>[0]) => {
      const result = checkPlan(asVersion1(oneBed({ zones: [zone({ plantings: [tomatoes({ lines, ...change })] })] })));
      if (!result.ok) throw new Error(JSON.stringify(result.faults));
      return result.plan.zones[0]?.plantings[0]?.lines.map(({ to }) => to);
    };
    expect(lastDays({})).toEqual([undefined, '2027-05-09']);
    expect(lastDays({ inGround: { from: '2027-04-20' } })).toEqual(['2027-04-30', undefined]);
  });

  it('is what is reckoned otherwise of the water: pressures, buckets, spray beside drip, loops', () => {
    const spray = { kind: 'spray' as const, flow: 10, count: 2 };
    const loops = {
      kind: 'dripline' as const,
      flow: 0.6,
      spacing: 12,
      layout: { kind: 'loops' as const, perPlant: 1 },
    };
    const plan = oneBed({
      zones: [
        zone({
          plantings: [tomatoes(), tomatoes({ id: 'more', lines: [spray] }), tomatoes({ id: 'p', lines: [loops] })],
        }),
      ],
      supply: {
        sources: [
          { name: 'Hose', pressure: 30, flow: { kind: 'bucket', volume: 5, seconds: 60 } },
          { name: 'Main', from: '2027-06-08' },
        ],
      },
    });
    const result = checkPlan(asVersion1(plan));
    expect(result.ok && result.migration?.changes.slice(-6)).toEqual([
      { code: 'flow-at-pressure', values: { sources: 1 } },
      { code: 'bucket-share', values: { sources: 1, share: 0.8 } },
      { code: 'efficiency-by-line', values: { zones: 1 } },
      { code: 'loop-emitters', values: { lines: 1 } },
      { code: 'ground-wetted', values: { plantings: 2 } },
      { code: 'roots-grow', values: { plantings: 3 } },
    ]);
  });

  it('is how many bulbs are left to dry, and in how many months of the season the ground is frozen', () => {
    const onions = tomatoes({ need: { kind: 'crop', crop: 'onion-dry', plantedOn: '2027-05-10' } });
    const { site } = oneBed();
    const minTemperature = [20, 25, 31, 33, 40, 50, 55, 55, 50, 40, 33, 25];
    const plan = oneBed({
      season: { firstDay: '2027-03-01', weeks: 39 },
      site: {
        ...site,
        climate: { ...site.climate, minTemperature, maxTemperature: minTemperature.map((low) => low + 20) },
      },
      zones: [zone({ plantings: [onions, tomatoes({ id: 'more' })] })],
    });
    const result = checkPlan(asVersion1(plan));
    if (!result.ok) throw new Error(JSON.stringify(result.faults));
    // Of March to November, by its lows in Fahrenheit, March.
    expect(result.migration?.changes.slice(-2)).toEqual([
      { code: 'dry-down', values: { plantings: 1 } },
      { code: 'frozen-ground', values: { months: 1 } },
    ]);
  });

  it('is how many names were not in one line, or showed nothing, and what they are now', () => {
    const plantings = [
      tomatoes({ name: 'Tomatoes\r\nby the wall' }),
      tomatoes({ id: 'herbs', name: '\u200b\u00a0' }),
      tomatoes({ id: 'clean', name: ' Kale\u202e ' }),
    ];
    const sources = [{ name: '\t' }, { name: 'Main', from: '2027-06-08' }];
    const plan = oneBed({
      name: '\u2800',
      zones: [zone({ name: 'Beds\t=1+1', plantings }), zone({ id: '7', name: '\u{e0020}', plantings: [] })],
      supply: { ...oneBed().supply, sources } as NonNullable<Plan['supply']>,
    });
    const result = checkPlan(asVersion1(plan));
    if (!result.ok) throw new Error(JSON.stringify(result.faults));
    expect(result.migration?.changes).toContainEqual({ code: 'names-cleaned', values: { names: 6 } });
    expect(result.plan.name).toBe(plan.season.firstDay);
    expect(result.plan.zones.map(({ name }) => name)).toEqual(['Beds =1+1', '7']);
    expect(result.plan.zones[0]?.plantings.map(({ name }) => name)).toEqual([
      'Tomatoes by the wall',
      'herbs',
      ' Kale\u202e ',
    ]);
    expect(result.plan.supply?.sources?.map(({ name }) => name)).toEqual(['1', 'Main']);
    expect(checkPlan(plan).ok).toBe(false);
  });

  it.each<[string, object]>([
    ['nothing at all', {}],
    ['lists where groups belong', { site: [], zones: {}, log: [1] }],
    ['nothing where groups belong', { site: null, zones: [null, { plantings: [7, null] }], log: { weeks: [null] } }],
  ])('of a document that is no plan is never an error: %s', (_name, document) => {
    const before = structuredClone(document);
    expect(from1.migrate(asVersion1(document) as Readonly<Record<string, unknown>>).document).toEqual(
      asVersion1(before),
    );
    expect(checkPlan(asVersion1(document)).ok).toBe(false);
  });
});
