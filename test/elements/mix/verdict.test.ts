import { describe, expect, it } from 'vitest';
import { plantingVerdict } from '../../../src/elements/mix/verdict.ts';
import type { PlantingComparison } from '../../../src/engine/mix/compare-zone.ts';

const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0);

/** A planting of one square metre. */
function planting(weeks: {
  needed: readonly number[];
  received: readonly number[];
  drained: readonly number[];
  short: readonly number[];
}): PlantingComparison {
  return {
    plantingId: 'p',
    name: 'P',
    areaM2: 1,
    efficiency: 0.8,
    rateMmPerHour: 10,
    neededMm: Float64Array.from(weeks.needed),
    receivedMm: Float64Array.from(weeks.received),
    drainedMm: Float64Array.from(weeks.drained),
    shortDays: Float64Array.from(weeks.short),
    neededLitres: sum(weeks.needed),
    receivedLitres: sum(weeks.received),
    drainedLitres: sum(weeks.drained),
    shortDayCount: sum(weeks.short),
    ratio: sum(weeks.received) / sum(weeks.needed),
  };
}

describe('plantingVerdict', () => {
  it('finds a planting about right that gets a tenth more than it needs, or less', () => {
    const about = planting({ needed: [10, 10], received: [11, 10.9], drained: [1, 1], short: [0, 0] });
    expect(plantingVerdict(about, true)).toEqual({ verdicts: ['right'], overWeeks: [], shortWeeks: [] });
  });

  it('says more where it gets up to half as much again', () => {
    const more = planting({ needed: [10, 10], received: [14, 14.9], drained: [4, 4], short: [0, 0] });
    expect(plantingVerdict(more, true)).toEqual({ verdicts: ['more'], overWeeks: [], shortWeeks: [] });
  });

  it('finds one overwatered that gets half as much again, and names the weeks', () => {
    const over = planting({ needed: [10, 10, 0], received: [12, 20, 0], drained: [2, 10, 0], short: [0, 0, 0] });
    expect(plantingVerdict(over, true)).toEqual({ verdicts: ['over'], overWeeks: [1], shortWeeks: [] });
  });

  it('finds one short that has days short, and says both where it is overwatered besides', () => {
    const both = planting({ needed: [10, 5], received: [25, 1], drained: [15, 0], short: [0, 3] });
    expect(plantingVerdict(both, true)).toEqual({ verdicts: ['short', 'over'], overWeeks: [0], shortWeeks: [1] });
  });

  it('does not speak of losses that no figure shows', () => {
    const verdict = plantingVerdict(planting({ needed: [0], received: [0.05], drained: [0.04], short: [0] }), true);
    expect(verdict).toEqual({ verdicts: ['right'], overWeeks: [], shortWeeks: [] });
  });

  it('tells a planting without a line from one that is not planted', () => {
    const dry = { ...planting({ needed: [9], received: [0], drained: [0], short: [7] }), rateMmPerHour: 0 };
    expect(plantingVerdict(dry, true).verdicts).toEqual(['none']);
    const none = planting({ needed: [0], received: [0], drained: [0], short: [0] });
    expect(plantingVerdict(none, false).verdicts).toEqual(['unplanted']);
  });
});
