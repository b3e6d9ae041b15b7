import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Lateral, lateral } from '../../../src/engine/line/lateral.ts';
import { lineRun } from '../../../src/engine/line/line-run.ts';
import { surelyFull } from '../../../src/engine/line/surely-full.ts';
import { arbitraryLaidLine, laidLine, plantingWith } from '../../support/laid-line.ts';

const pressures = fc.integer({ min: 50, max: 400 });

function asLateral(line: Parameters<typeof lineRun>[0], inletPressureKpa: number): Lateral {
  const run = lineRun(line, plantingWith([line]));
  if (run === undefined) throw new Error('this line has emitters');
  return { ...run.lateral, inletPressureKpa };
}

describe('a line that is surely full', () => {
  it('is full when it is solved: every emitter has its least pressure and its nominal flow', () => {
    let full = 0;
    fc.assert(
      fc.property(arbitraryLaidLine, pressures, (line, inletPressureKpa) => {
        const run = asLateral(line, inletPressureKpa);
        if (!surelyFull(run)) return;
        full += 1;
        const { leastPressureKpa, flowsLph } = lateral(run);
        expect(leastPressureKpa).toBeGreaterThanOrEqual(70 * (1 - 1e-9));
        for (const flow of flowsLph) expect(flow).toBeCloseTo(line.emitterFlowLph, 9);
      }),
      { numRuns: 300 },
    );
    expect(full).toBeGreaterThan(20);
  });

  it('as a compensating dead end is told apart exactly: where it is not, some emitter is below its least', () => {
    let partly = 0;
    fc.assert(
      fc.property(arbitraryLaidLine, pressures, (line, inletPressureKpa) => {
        const run = asLateral({ ...line, compensating: true, topology: 'dead-end' }, inletPressureKpa);
        if (surelyFull(run)) return;
        partly += 1;
        expect(lateral(run).leastPressureKpa).toBeLessThan(70 * (1 + 1e-9));
      }),
      { numRuns: 300 },
    );
    expect(partly).toBeGreaterThan(20);
  });

  it('is never one of plain emitters', () => {
    const line = laidLine({ outlets: 2, compensating: false });
    expect(surelyFull(asLateral(line, 400))).toBe(false);
    expect(surelyFull(asLateral({ ...line, compensating: true }, 400))).toBe(true);
  });
});
