/** By hand: halves together are what was cut, and nothing of its water is lost. */
import { expect, it } from 'vitest';
import { gardenOf } from '../../src/plan/garden-of.ts';
import type { Plan, PlanPlanting } from '../../src/plan/schema/plan-schema.ts';
import { splitPlanting } from '../../src/plan/split-planting.ts';
import { mixedGarden } from '../support/small-plans.ts';

const SECOND = { id: 'half', name: 'Half' };
const drip = { kind: 'dripline', flow: 0.6, spacing: 12 } as const;

const planting = (extent: PlanPlanting['extent'], lines: PlanPlanting['lines'], other = {}): PlanPlanting => ({
  ...{ id: 'whole', name: 'Whole', need: { kind: 'class', class: 'moderate' }, extent, lines },
  ...other,
});

const CASES: readonly (readonly [string, PlanPlanting])[] = [
  [
    'a bed',
    planting({ kind: 'bed', length: 4, width: 12 }, [{ ...drip, layout: { kind: 'rows', rows: 3, length: 12 } }]),
  ],
  [
    'rows',
    planting({ kind: 'rows', rows: 4, length: 20 }, [{ ...drip, layout: { kind: 'rows', rows: 4, length: 20 } }]),
  ],
  ['one row', planting({ kind: 'rows', rows: 1, length: 20 }, [{ ...drip, layout: { kind: 'length', length: 20 } }])],
  [
    'shrubs',
    planting({ kind: 'canopy', count: 9, diameter: 36 }, [{ ...drip, layout: { kind: 'loops', perPlant: 1 } }]),
  ],
  ['an area', planting({ kind: 'area', area: 50 }, [{ kind: 'spray', flow: 10, count: 3 }])],
  [
    'pots',
    planting({ kind: 'canopy', count: 6, diameter: 18 }, [{ kind: 'point', flow: 0.5, count: 2 }], {
      container: { volume: 5, count: 6 },
    }),
  ],
];

const garden = (plantings: readonly PlanPlanting[]): Plan => {
  const [zone] = mixedGarden().zones;
  if (zone === undefined) throw new Error('the garden has a zone');
  return { ...mixedGarden(), log: {}, choices: {}, zones: [{ ...zone, plantings: [...plantings] }] };
};

it.each(CASES)('%s in two has the ground, the emitters and the pots of the whole', (_, whole) => {
  const halves = splitPlanting(whole, SECOND);
  if (halves === undefined) throw new Error('it can be cut');
  const sums = (plantings: readonly PlanPlanting[]) => {
    const [zone] = gardenOf(garden(plantings)).zones;
    const sum = (of: (each: NonNullable<typeof zone>['plantings'][number]) => number) =>
      (zone?.plantings ?? []).reduce((total, each) => total + of(each), 0);
    return {
      areaM2: sum((each) => each.areaM2),
      emitters: sum((each) => each.lines.reduce((total, line) => total + line.emitters, 0)),
      pots: sum((each) => each.container?.count ?? 0),
    };
  };
  const [before, after] = [sums([whole]), sums(halves)];
  expect(after.areaM2).toBeCloseTo(before.areaM2, 9);
  expect(after).toMatchObject({ emitters: before.emitters, pots: before.pots });
  expect(halves.map(({ id, name }) => [id, name])).toEqual([
    ['whole', 'Whole'],
    ['half', 'Half'],
  ]);
});

it.each([
  ['one plant', planting({ kind: 'canopy', count: 1, diameter: 36 }, [])],
  ['one micro-spray', planting({ kind: 'area', area: 50 }, [{ kind: 'spray', flow: 10, count: 1 }])],
] as const)('%s cannot be cut', (_, whole) => {
  expect(splitPlanting(whole, SECOND)).toBeUndefined();
});
