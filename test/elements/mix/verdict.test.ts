import { describe, expect, it } from 'vitest';
import { plantingVerdict } from '../../../src/elements/mix/verdict.ts';
import type { PlantingComparison } from '../../../src/engine/mix/compare-zone.ts';

const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0);

/** A planting of one square metre. */
function planting(weeks: {
  received: readonly number[];
  drained: readonly number[];
  short: readonly number[];
}): PlantingComparison {
  return {
    plantingId: 'p',
    name: 'P',
    areaM2: 1,
    rateMmPerHour: 10,
    neededMm: new Float64Array(weeks.received.length),
    receivedMm: Float64Array.from(weeks.received),
    drainedMm: Float64Array.from(weeks.drained),
    shortDays: Float64Array.from(weeks.short),
    neededLitres: 0,
    receivedLitres: sum(weeks.received),
    drainedLitres: sum(weeks.drained),
    shortDayCount: sum(weeks.short),
    ratio: 1,
  };
}

describe('plantingVerdict', () => {
  it('finds a planting about right that loses a tenth or less', () => {
    const verdict = plantingVerdict(planting({ received: [10, 10], drained: [1, 1], short: [0, 0] }), true);
    expect(verdict).toEqual({ verdicts: ['right'], overWeeks: [], shortWeeks: [] });
  });

  it('finds one drowned that loses more, and names the weeks', () => {
    const verdict = plantingVerdict(planting({ received: [10, 10, 0], drained: [1, 4, 0], short: [0, 0, 0] }), true);
    expect(verdict).toEqual({ verdicts: ['over'], overWeeks: [1], shortWeeks: [] });
  });

  it('finds one short that has days short, and says both where it is drowned in other weeks', () => {
    const verdict = plantingVerdict(planting({ received: [10, 1], drained: [5, 0], short: [0, 3] }), true);
    expect(verdict).toEqual({ verdicts: ['short', 'over'], overWeeks: [0], shortWeeks: [1] });
  });

  it('does not speak of losses that no figure shows', () => {
    const verdict = plantingVerdict(planting({ received: [0.05], drained: [0.04], short: [0] }), true);
    expect(verdict.overWeeks).toEqual([]);
  });

  it('tells a planting without a line from one that is not planted', () => {
    const dry = { ...planting({ received: [0], drained: [0], short: [7] }), rateMmPerHour: 0 };
    expect(plantingVerdict(dry, true).verdicts).toEqual(['none']);
    expect(plantingVerdict(planting({ received: [0], drained: [0], short: [0] }), false).verdicts).toEqual([
      'unplanted',
    ]);
  });
});
