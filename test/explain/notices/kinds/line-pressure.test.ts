import { describe, expect, it } from 'vitest';
import type { GardenLine, SupplySource } from '../../../../src/engine/garden.ts';
import { longestLine } from '../../../../src/engine/line/line-profile.ts';
import { runSeason } from '../../../../src/engine/season/run-season.ts';
import { noticesOf } from '../../../../src/explain/notices/notices-of.ts';
import { laidLine, pointLine } from '../../../support/laid-line.ts';
import { figuresOf } from '../../../support/notices.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone } from '../../../support/plain-garden.ts';

const LAID = { from: FIRST_DAY - 100 };

function told(lines: readonly GardenLine[], sources: readonly Partial<SupplySource>[] = [{ pressureKpa: 120 }]) {
  const planting = plainPlanting({ lines, areaM2: 40 });
  const supply = {
    sources: sources.map((source) => ({ from: FIRST_DAY, name: 'Source', ...source })),
    windowWeekdays: 127,
    windowHoursPerDay: 24,
  };
  const season = runSeason(plainGarden([plainZone({ plantings: [planting] })], { supply }));
  return noticesOf(season).filter(({ kind }) => kind === 'line-too-long' || kind === 'pressure-low');
}

describe('a line that its pressure does not carry', () => {
  it('is told at the first outlet beyond its longest run, not before', () => {
    const line = laidLine(LAID);
    const longest = longestLine(line, plainPlanting({ lines: [line] }), 120)?.outlets as number;
    expect(longest).toBeGreaterThan(50);
    expect(told([laidLine({ ...LAID, outlets: longest })])).toEqual([]);
    expect(told([laidLine({ ...LAID, outlets: longest + 1 })])).toMatchObject([
      {
        kind: 'line-too-long',
        severity: 'warning',
        remedy: 'shorten-run',
        zoneId: 'zone',
        plantingId: 'bed',
        lineIndex: 0,
        firstWeek: 0,
        lastWeek: 9,
        figures: {
          runLengthM: expect.closeTo(0.3 * (longest + 1), 9),
          longestRunM: expect.closeTo(0.3 * longest, 9),
          inletPressureKpa: 120,
          neededPressureKpa: 70,
        },
      },
    ]);
  });

  it('is told of plain emitters that differ by more than 10 % (Keller and Karmeli 1975, from memory)', () => {
    const [notice] = told([laidLine({ ...LAID, outlets: 250, compensating: false })]);
    expect(notice?.kind).toBe('line-too-long');
    const { flowVariation = 0, beyondBounds } = figuresOf(notice ?? expect.unreachable('it is told'));
    expect(flowVariation).toBeGreaterThan(0.1);
    expect(beyondBounds).toBeCloseTo(flowVariation - 0.1, 12);
  });

  it('is a danger where emitters are dry', () => {
    const [notice] = told([laidLine({ ...LAID, outlets: 100, riseMPerM: 0.5 })]);
    expect(notice).toMatchObject({ kind: 'line-too-long', severity: 'danger' });
    expect(figuresOf(notice ?? expect.unreachable('it is told'))['dryShare']).toBeGreaterThan(0);
  });

  it('is no more than a note where the pressure is not known, or the spacing is estimated', () => {
    expect(told([laidLine({ ...LAID, outlets: 500 })], [{}])).toMatchObject([{ severity: 'note' }]);
    const points = pointLine(400, { ...LAID, emitterFlowLph: 8 });
    expect(told([points])).toMatchObject([{ severity: 'note' }]);
    expect(told([points], [{}])).toEqual([]);
  });
});

describe('a pressure that is too low', () => {
  it('is told where not even one emitter would work', () => {
    expect(told([laidLine({ ...LAID, outlets: 3 })], [{ pressureKpa: 60 }])).toMatchObject([
      { kind: 'pressure-low', severity: 'warning', remedy: 'more-pressure', figures: { longestRunM: 0 } },
    ]);
  });

  it('is a danger where nothing comes out at all', () => {
    for (const compensating of [true, false]) {
      const [notice, ...others] = told([laidLine({ ...LAID, outlets: 3, compensating })], [{ pressureKpa: 0 }]);
      expect(notice).toMatchObject({ kind: 'pressure-low', severity: 'danger', figures: { dryShare: 1 } });
      expect(others).toEqual([]);
    }
  });

  it('holds for the weeks of the weak source alone, beside what holds for another', () => {
    const sources = [
      { name: 'Barrel', pressureKpa: 20 },
      { from: FIRST_DAY + 21, name: 'Hose', pressureKpa: 75 },
      { from: FIRST_DAY + 35, name: 'Main', pressureKpa: 400 },
    ];
    expect(told([laidLine({ ...LAID, outlets: 200 })], sources)).toMatchObject([
      { kind: 'pressure-low', weeks: [0, 1, 2] },
      { kind: 'line-too-long', weeks: [3, 4] },
    ]);
  });

  it('counts the line that lies: one laid anew is judged by itself', () => {
    const lines = [
      laidLine({ ...LAID, outlets: 500, to: FIRST_DAY + 13 }),
      laidLine({ from: FIRST_DAY + 14, outlets: 50 }),
    ];
    expect(told(lines)).toMatchObject([{ lineIndex: 0, weeks: [0, 1] }]);
  });
});
