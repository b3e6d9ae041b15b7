import { describe, expect, it } from 'vitest';
import type { PlanLine } from '../../../../src/plan/schema/plan-schema.ts';
import { kindsOf, noticed } from '../../../support/noticed.ts';
import { metricGarden, oneBed, tomatoes, zone } from '../../../support/small-plans.ts';

const dripline: Extract<PlanLine, { kind: 'dripline' }> = {
  kind: 'dripline',
  flow: 0.9,
  spacing: 18,
  layout: { kind: 'rows', rows: 4, length: 20 },
};

describe('a line on the downhill side', () => {
  it('moves to the uphill side, and keeps everything else', () => {
    const lines: PlanLine[] = [{ ...dripline, spacing: 12, slopeSide: 'downhill', risePercent: 2 }];
    const plan = oneBed({ zones: [zone({ slopePercent: 8, plantings: [tomatoes({ lines })] })] });
    const { remedies, mended } = noticed(plan, 'line-downhill');
    expect(remedies).toMatchObject([{ kind: 'uphill', remaining: 0, litresMore: 0, unmetLitresMore: 0 }]);
    const moved = mended('uphill');
    expect(moved.zones[0]?.plantings[0]?.lines).toEqual([{ ...lines[0], slopeSide: 'uphill' }]);
    expect(kindsOf(moved)).not.toContain('line-downhill');
  });
});

describe('emitters too far apart', () => {
  it('stand every 12 in on sand, the widest that joins there and is sold', () => {
    const plan = oneBed({ zones: [zone({ soil: 'sand', plantings: [tomatoes({ lines: [dripline] })] })] });
    const { remedies, mended } = noticed(plan, 'emitters-far-apart');
    expect(remedies.map(({ kind, remaining }) => [kind, remaining])).toEqual([['closer-spacing', 0]]);
    expect(mended('closer-spacing').zones[0]?.plantings[0]?.lines).toEqual([{ ...dripline, spacing: 12 }]);
  });

  it('are given in centimetres in a metric plan', () => {
    const [vegetables, hedge] = metricGarden().zones;
    if (vegetables === undefined || hedge === undefined) return expect.unreachable('the garden has two zones');
    const wide = vegetables.plantings.map((planting) => ({
      ...planting,
      lines: [{ ...dripline, flow: 2.3, spacing: 60, layout: { kind: 'length', length: 18 } } as const],
    }));
    const plan = metricGarden({ zones: [{ ...vegetables, plantings: wide }, hedge] });
    expect(noticed(plan, 'emitters-far-apart').mended('closer-spacing').zones[0]?.plantings[0]?.lines).toMatchObject([
      { spacing: 46 },
    ]);
  });
});
