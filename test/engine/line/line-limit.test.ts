import { describe, expect, it } from 'vitest';
import { type Lateral, lateral } from '../../../src/engine/line/lateral.ts';
import { lineLimit } from '../../../src/engine/line/line-limit.ts';

const LINE: Lateral = Object.freeze({
  topology: 'dead-end',
  outlets: 100,
  spacingM: 0.3,
  insideDiameterMm: 14.2,
  inletPressureKpa: 170,
  emitter: Object.freeze({ kind: 'plain', nominalFlowLph: 2.3, nominalPressureKpa: 140, exponent: 0.5 }),
});

describe('what a line breaks', () => {
  const solved = lateral(LINE);
  const { leastPressureKpa, flowVariation } = solved;

  it('is nothing where it meets both bounds exactly', () => {
    expect(lineLimit(solved, { leastPressureKpa, mostFlowVariation: flowVariation })).toBeUndefined();
  });

  it('is the bound that is a little tighter', () => {
    const tighter = leastPressureKpa + 0.01;
    expect(lineLimit(solved, { leastPressureKpa: tighter, mostFlowVariation: 1 })).toBe('least-pressure');
    expect(lineLimit(solved, { leastPressureKpa: 0, mostFlowVariation: flowVariation - 0.001 })).toBe('flow-variation');
  });

  it('is the pressure where an outlet is dry, however little is asked for', () => {
    const uphill = lateral({ ...LINE, riseMPerM: 1 });
    expect(uphill.state).toBe('partly-dry');
    expect(lineLimit(uphill, { leastPressureKpa: 0, mostFlowVariation: 1 })).toBe('least-pressure');
  });
});
