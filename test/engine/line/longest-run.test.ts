import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Emitter } from '../../../src/engine/line/emitter.ts';
import { lateral } from '../../../src/engine/line/lateral.ts';
import { type LongestRunInput, longestRun } from '../../../src/engine/line/longest-run.ts';
import { christiansenSum } from '../../published/formulas/christiansen.ts';
import { pipeLossKpa } from '../../support/pipe-loss.ts';

const compensating: Emitter = Object.freeze({ kind: 'compensating', nominalFlowLph: 2.3, leastPressureKpa: 70 });
const plain: Emitter = Object.freeze({ kind: 'plain', nominalFlowLph: 2.3, nominalPressureKpa: 140, exponent: 0.5 });

const LINE: LongestRunInput = Object.freeze({
  topology: 'dead-end',
  spacingM: 0.3,
  insideDiameterMm: 14.2,
  inletPressureKpa: 170,
  emitter: compensating,
});

describe('longest run', () => {
  it("of compensating dripline is the last that the exact sum of Christiansen's series leaves its least pressure", () => {
    const loss = (outlets: number) => {
      const full = { flowLph: 2.3 * outlets, insideDiameterMm: 14.2, lengthM: 0.3 * outlets, hazenWilliamsC: 130 };
      return christiansenSum(outlets) * pipeLossKpa(full);
    };
    const { outlets, lengthM, limitedBy } = longestRun(LINE);
    expect(loss(outlets)).toBeLessThanOrEqual(100);
    expect(loss(outlets + 1)).toBeGreaterThan(100);
    expect(lengthM).toBeCloseTo(0.3 * outlets, 9);
    expect(limitedBy).toBe('least-pressure');
  });

  it('of plain emitters keeps their flows within 10 % (Keller and Karmeli 1975, from memory): 20 % of pressure for an orifice', () => {
    const { outlets, profile, limitedBy } = longestRun({ ...LINE, emitter: plain });
    const first = profile?.pressuresKpa[0] as number;
    expect(limitedBy).toBe('flow-variation');
    expect(profile?.flowVariation).toBeLessThanOrEqual(0.1);
    expect((profile?.endPressureKpa as number) / first).toBeCloseTo(0.81, 2);
    expect(lateral({ ...LINE, emitter: plain, outlets: outlets + 1 }).flowVariation).toBeGreaterThan(0.1);
  });

  it('as a level loop is twice the dead end', () => {
    for (const emitter of [compensating, plain]) {
      const deadEnd = longestRun({ ...LINE, emitter, leadM: 0.15 });
      const loop = longestRun({ ...LINE, emitter, leadM: 0.15, topology: 'loop' });
      expect(loop.outlets - 2 * deadEnd.outlets).toBeGreaterThanOrEqual(0);
      expect(loop.outlets - 2 * deadEnd.outlets).toBeLessThanOrEqual(1);
    }
  });

  it('a least pressure asked for counts, also with plain emitters', () => {
    const { limitedBy, profile } = longestRun({
      ...LINE,
      emitter: plain,
      mostFlowVariation: 0.5,
      leastPressureKpa: 120,
    });
    expect(limitedBy).toBe('least-pressure');
    expect(profile?.leastPressureKpa).toBeGreaterThanOrEqual(120);
  });

  it('there is none where not even one emitter has its pressure', () => {
    expect(longestRun({ ...LINE, inletPressureKpa: 60 })).toEqual({
      outlets: 0,
      lengthM: 0,
      limitedBy: 'least-pressure',
      profile: undefined,
    });
    expect(longestRun({ ...LINE, inletPressureKpa: 0, emitter: plain }).outlets).toBe(0);
  });

  it('ends its search where it is told to, and says that nothing stood against it', () => {
    const { outlets, limitedBy } = longestRun({ ...LINE, insideDiameterMm: 100, mostOutlets: 333 });
    expect(outlets).toBe(333);
    expect(limitedBy).toBe('nothing-found');
  });

  it('works, and one outlet more does not: any line, any slope', () => {
    const anyInput = fc.record({
      topology: fc.constantFrom('dead-end' as const, 'loop' as const),
      spacingM: fc.double({ min: 0.15, max: 0.6, noNaN: true }),
      insideDiameterMm: fc.double({ min: 4, max: 20, noNaN: true }),
      inletPressureKpa: fc.double({ min: 75, max: 300, noNaN: true }),
      riseMPerM: fc.double({ min: -0.1, max: 0.1, noNaN: true }),
      emitter: fc.constantFrom(compensating, plain),
    });
    const keeps = (input: LongestRunInput, outlets: number) => {
      const { leastPressureKpa, flowVariation } = lateral({ ...input, outlets });
      return input.emitter.kind === 'plain' ? flowVariation <= 0.1 + 1e-8 : leastPressureKpa >= 70 - 1e-6;
    };
    fc.assert(
      fc.property(anyInput, (input) => {
        const { outlets, limitedBy } = longestRun(Object.freeze({ ...input, mostOutlets: 400 }));
        if (outlets > 0) expect(keeps(input, outlets)).toBe(true);
        if (limitedBy === 'nothing-found') expect(outlets).toBe(400);
        else expect(keeps(input, outlets + 1)).toBe(false);
      }),
      { numRuns: 40 },
    );
  });

  it('on level ground it is the longest of all, and a wider tube or more pressure never shortens it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 12, noNaN: true }),
        fc.double({ min: 80, max: 200, noNaN: true }),
        fc.constantFrom(compensating, plain),
        (insideDiameterMm, inletPressureKpa, emitter) => {
          const input = Object.freeze({ ...LINE, insideDiameterMm, inletPressureKpa, emitter });
          const { outlets } = longestRun(input);
          expect(longestRun({ ...input, insideDiameterMm: insideDiameterMm * 1.2 }).outlets).toBeGreaterThanOrEqual(
            outlets,
          );
          expect(longestRun({ ...input, inletPressureKpa: inletPressureKpa * 1.2 }).outlets).toBeGreaterThanOrEqual(
            outlets,
          );
          for (const longer of [outlets + 1, outlets + 2, 2 * outlets]) {
            const { flowVariation, leastPressureKpa } = lateral({ ...input, outlets: Math.max(1, longer) });
            const fails = emitter.kind === 'plain' ? flowVariation > 0.1 : leastPressureKpa < 70;
            expect(fails || longer === outlets).toBe(true);
          }
        },
      ),
      { numRuns: 30 },
    );
  });
});
