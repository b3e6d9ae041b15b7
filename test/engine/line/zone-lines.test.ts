import { describe, expect, it } from 'vitest';
import type { Garden, GardenSupply, GardenZone } from '../../../src/engine/garden.ts';
import { lateral } from '../../../src/engine/line/lateral.ts';
import { NOMINAL_PRESSURE_KPA } from '../../../src/engine/line/usual-pressures.data.ts';
import { lineDays, plantingLine, zoneLines } from '../../../src/engine/line/zone-lines.ts';
import { laidLine, plantingWith, pointLine } from '../../support/laid-line.ts';
import { zoneWithFlows } from '../../support/with-flows.ts';

const GARDEN: Pick<Garden, 'span'> = { span: { firstDay: 20_000, weeks: 10 } };

const SOURCES = [
  { from: 20_000, name: 'Hose', pressureKpa: 120 },
  { from: 20_031, name: 'Main', pressureKpa: 240 },
];

function zoneOf(plantings: GardenZone['plantings'], sources: GardenSupply['sources'] = SOURCES): GardenZone {
  const zone: GardenZone = {
    id: 'zone',
    name: 'Zone',
    soil: { texture: 'loam', availableWater: 0.15, intakeMmPerHour: 10, slopePercent: 0 },
    wateringDays: 127,
    rule: { kind: 'thirstiest' },
    timerStepMinutes: 1,
    longestCycleMinutes: Number.POSITIVE_INFINITY,
    startsADay: 4,
    efficiency: 0.8,
    efficiencyBasis: 'default',
    plantings,
    choices: new Map(),
  };
  return zoneWithFlows(zone, sources);
}

describe('the lines of a zone in a week', () => {
  const relaid = plantingWith([laidLine({ outlets: 50, to: 20_009 }), laidLine({ outlets: 120, from: 20_010 })]);
  const zone = zoneOf([
    relaid,
    plantingWith([], { id: 'bare' }),
    plantingWith([pointLine(6)], { id: 'late', from: 20_020 }),
  ]);

  it('are those that lie at its end, at the pressure of the source that serves then', () => {
    const placesAndPressures = (week: number) =>
      zoneLines(GARDEN, zone, week).map(({ planting, index, inlet }) => [planting.id, index, inlet.kpa]);
    expect(placesAndPressures(0)).toEqual([['beds', 0, 120]]);
    expect(placesAndPressures(1)).toEqual([['beds', 1, 120]]);
    expect(placesAndPressures(2)).toEqual([
      ['beds', 1, 120],
      ['late', 0, 120],
    ]);
    expect(placesAndPressures(4)).toEqual([
      ['beds', 1, 240],
      ['late', 0, 240],
    ]);
  });

  it('are as on the last day in the ground in the week in which a planting comes out', () => {
    const pulled = zoneOf([plantingWith([laidLine({ to: 20_009 }), laidLine({ from: 20_010 })], { to: 20_008 })]);
    expect(zoneLines(GARDEN, pulled, 1).map(({ index }) => index)).toEqual([0]);
    expect(zoneLines(GARDEN, pulled, 2)).toEqual([]);
  });

  it('are all that lie at once', () => {
    const both = zoneOf([plantingWith([laidLine(), laidLine({ from: 20_010 })])]);
    expect(zoneLines(GARDEN, both, 0).map(({ index }) => index)).toEqual([0]);
    expect(zoneLines(GARDEN, both, 1).map(({ index }) => index)).toEqual([0, 1]);
  });

  it('stand under the pressure that a solid line in front of them leaves', () => {
    const solid = pointLine(0, { kind: 'solid', lengthM: 20, riseMPerM: 0.05 });
    const [line] = zoneLines(GARDEN, zoneOf([plantingWith([solid, laidLine()])]), 0);
    // A metre of climb, and the friction of 230 L/h in 20 m of 14.2 mm.
    expect(line?.inlet.isKnown).toBe(true);
    expect(line?.inlet.kpa).toBeLessThan(120 - 9.80665);
    expect(line?.inlet.kpa).toBeGreaterThan(120 - 9.80665 - 10);
  });

  it('without a known pressure are reckoned at the usual regulated one, and say so', () => {
    const [line] = zoneLines(GARDEN, zoneOf(zone.plantings, []), 0);
    expect(line?.inlet).toEqual({ kpa: NOMINAL_PRESSURE_KPA, isKnown: false });
  });
});

describe('one line', () => {
  it('tells its profile, how fast its water runs, what it breaks and how long it may be', () => {
    const line = laidLine({ outlets: 400, runs: 2 });
    const of = plantingLine(plantingWith([line]), 0, { kpa: 120, isKnown: true });
    expect(of?.fault).toBe('least-pressure');
    expect(of?.run.runs).toBe(2);
    expect(of?.longest.outlets).toBeLessThan(400);
    // 0.4085 Q/d2 (ft/s, gpm, inches), the handbooks' form.
    const gpm = (of?.profile.inletFlowLph as number) / 60 / 3.785411784;
    expect((of?.velocityMs as number) / 0.3048).toBeCloseTo((0.4085 * gpm) / (14.2 / 25.4) ** 2, 2);
  });

  it('in a loop is as fast as either end carries', () => {
    const loop = plantingLine(plantingWith([laidLine({ outlets: 100, topology: 'loop' })]), 0, {
      kpa: 200,
      isKnown: true,
    });
    const deadEnd = lateral({
      topology: 'dead-end',
      outlets: 50,
      spacingM: 0.3,
      insideDiameterMm: 14.2,
      inletPressureKpa: 200,
      emitter: { kind: 'compensating', nominalFlowLph: 2.3, leastPressureKpa: 70 },
    });
    const carried = Math.max(...(loop?.profile.reachFlowsLph ?? []).map(Math.abs));
    expect(carried).toBeCloseTo(deadEnd.inletFlowLph, 9);
  });

  it('that is not there is undefined', () => {
    expect(plantingLine(plantingWith([laidLine()]), 1, { kpa: 120, isKnown: true })).toBeUndefined();
  });
});

describe('the days of a line', () => {
  const season = { first: 20_005, last: 20_074 };
  const lines = [laidLine({ from: 20_000, to: 20_029 }), laidLine({ from: 20_030 })];

  it.each([
    ['from the season on to its last day', {}, 0, { first: 20_005, last: 20_029 }],
    ['to the season’s end', {}, 1, { first: 20_030, last: 20_074 }],
    ['while the planting is in the ground', { from: 20_040, to: 20_050 }, 1, { first: 20_040, last: 20_050 }],
    ['none before it', { from: 20_040 }, 0, undefined],
    ['none of a line that is not there', {}, 2, undefined],
  ])('%s', (_name, stay, index, expected) => {
    expect(lineDays(plantingWith(lines, stay), index, season)).toEqual(expected);
  });
});
