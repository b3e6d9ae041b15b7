import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lateral } from '../../../src/engine/line/lateral.ts';
import { isSurelyFull, lineFault, lineProfile, longestLine } from '../../../src/engine/line/line-profile.ts';
import { lineRun } from '../../../src/engine/line/line-run.ts';
import { arbitraryLaidLine, laidLine, plantingWith, pointLine } from '../../support/laid-line.ts';

describe('the profile of a planting’s line', () => {
  it('is that of its lateral at the pressure asked for', () => {
    const line = laidLine({ runs: 3, outlets: 60, compensating: false });
    const planting = plantingWith([line]);
    const run = lineRun(line, planting)?.lateral;
    expect(lineProfile(line, planting, 200)).toEqual(run && lateral({ ...run, inletPressureKpa: 200 }));
    expect(lineProfile(line, planting, 150)?.leastPressureKpa).toBeLessThan(150);
  });

  it('is solved once while line and planting are the same', () => {
    const line = laidLine();
    const planting = plantingWith([line]);
    expect(lineProfile(line, planting, 200)).toBe(lineProfile(line, planting, 200));
    expect(lineProfile({ ...line }, planting, 200)).not.toBe(lineProfile(line, planting, 200));
  });

  it('of a run with more outlets than are solved one by one carries the same flow, to a thousandth', () => {
    const line = laidLine({ outlets: 4500, spacingM: 0.02, emitterFlowLph: 0.05 });
    const planting = plantingWith([line]);
    const run = lineRun(line, planting)?.lateral;
    const exact = run && lateral({ ...run, inletPressureKpa: 300 });
    const grouped = lineProfile(line, planting, 300);
    expect(grouped?.pressuresKpa.length).toBe(1500);
    expect(grouped?.inletFlowLph).toBeCloseTo(exact?.inletFlowLph as number, 9);
    const loss = (end: number | undefined) => 300 - (end as number);
    expect(loss(grouped?.endPressureKpa) / loss(exact?.endPressureKpa)).toBeCloseTo(1, 2);
  });

  it('is of no line without emitters', () => {
    const line = pointLine(0, { kind: 'solid' });
    const planting = plantingWith([line]);
    expect(lineProfile(line, planting, 200)).toBeUndefined();
    expect(lineFault(line, planting, 200)).toBeUndefined();
    expect(longestLine(line, planting, 200)).toBeUndefined();
    expect(isSurelyFull(line, planting, 200)).toBe(false);
  });
});

describe('a line on level ground or uphill', () => {
  it('is at fault just when its run is longer than the longest that works', () => {
    const seen = { faulty: 0, sound: 0 };
    fc.assert(
      fc.property(arbitraryLaidLine, fc.integer({ min: 60, max: 350 }), (laid, kpa) => {
        const line = { ...laid, riseMPerM: Math.abs(laid.riseMPerM) };
        const planting = plantingWith([line]);
        const longest = longestLine(line, planting, kpa);
        const fault = lineFault(line, planting, kpa);
        expect(fault === undefined).toBe(line.emitters / (line.runs ?? 1) <= (longest?.outlets as number));
        seen[fault === undefined ? 'sound' : 'faulty'] += 1;
      }),
      { numRuns: 60 },
    );
    expect(Math.min(seen.faulty, seen.sound)).toBeGreaterThan(5);
  });
});

describe('a line downhill', () => {
  it('that is at fault has a shorter longest run, though a longer one may work', () => {
    let faulty = 0;
    fc.assert(
      fc.property(arbitraryLaidLine, fc.integer({ min: 60, max: 350 }), (laid, kpa) => {
        const line = { ...laid, compensating: false, riseMPerM: -Math.abs(laid.riseMPerM) };
        const planting = plantingWith([line]);
        if (lineFault(line, planting, kpa) === undefined) return;
        expect(longestLine(line, planting, kpa)?.outlets).toBeLessThan(line.emitters / (line.runs ?? 1));
        faulty += 1;
      }),
      { numRuns: 60 },
    );
    expect(faulty).toBeGreaterThan(5);
  });

  it('of which a longer one works: a ring of 95 emitters does not, one of 100 does', () => {
    const ring = { topology: 'loop', insideDiameterMm: 8, emitterFlowLph: 4, exponent: 1 } as const;
    const lines = [95, 100].map((outlets) => laidLine({ ...ring, outlets, compensating: false, riseMPerM: -0.1 }));
    const planting = plantingWith(lines);
    expect(lines.map((line) => lineFault(line, planting, 80))).toEqual(['flow-variation', undefined]);
    const [longest, whole] = lines.map((line) => longestLine(line, planting, 80)?.outlets as number);
    expect(longest).toBeLessThan(95);
    expect(whole).toBeGreaterThanOrEqual(100);
  });
});
