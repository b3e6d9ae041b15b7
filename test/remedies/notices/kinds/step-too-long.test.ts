import { describe, expect, it } from 'vitest';
import { noticed } from '../../../support/noticed.ts';
import { oneBed, tomatoes, zone } from '../../../support/small-plans.ts';

/** 0.9 gph every 12 in, rows a foot apart, on clay that slopes: water runs off after 4.5 min at 9 %. */
function remediedStep(timerStepMinutes: number, slopePercent: number) {
  const plantings = [
    tomatoes({
      extent: { kind: 'bed', length: 20, width: 4 },
      lines: [{ kind: 'dripline', flow: 0.9, spacing: 12, layout: { kind: 'rows', rows: 4, length: 20 } }],
    }),
  ];
  const plan = oneBed({ zones: [zone({ soil: 'clay', slopePercent, timerStepMinutes, plantings })] });
  const { notice, remedies } = noticed(plan, 'step-too-long');
  const step = remedies.find(({ kind }) => kind === 'smaller-step');
  return {
    longest: notice.figures.longestCycleMinutes,
    step: step?.kind === 'smaller-step' ? step.timerStepMinutes : undefined,
  };
}

describe('a timer whose shortest run is longer than the soil takes in', () => {
  it('is replaced by one whose step it takes in: 2 of 4.5 min, not 5', () => {
    const { longest, step } = remediedStep(30, 9);
    expect(longest).toBeCloseTo(4.465, 2);
    expect(step).toBe(2);
  });

  it('keeps the longest of the steps that it takes in', () => {
    const { longest, step } = remediedStep(30, 0);
    expect(longest).toBeGreaterThan(step ?? Number.NaN);
    expect(longest).toBeLessThan(15);
    expect(step).toBeGreaterThanOrEqual(5);
  });
});
