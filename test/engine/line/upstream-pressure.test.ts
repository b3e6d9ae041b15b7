/** Three outlets of 2 L/h on reaches of 0.01 kPa at 1 L/h: Hazen-Williams by hand, Q^1.852 of 2, 4 and 6 L/h (of 5, 7 and 9 with 3 behind). */
import { describe, expect, it } from 'vitest';
import { noFlow, upstreamPressure } from '../../../src/engine/line/upstream-pressure.ts';

const line = (climbKpa: number) => ({
  reaches: { frictions: new Float64Array(3).fill(0.01), climbs: new Float64Array(3).fill(climbKpa) },
  law: (kpa: number) => (kpa > 0 ? 2 : 0),
  outlets: 3,
  lastShare: 1,
  feedPressureKpa: 50,
});

describe('the feed’s pressure for one at the end', () => {
  it.each([
    // 3.6100 + 13.0321 + 27.6144 = 44.2566 hundredths.
    ['level', 0, 0, 10.442566],
    ['uphill', 1, 0, 13.442566],
    // 19.7012 + 36.7385 + 58.5136 = 114.9533 hundredths.
    ['with flow that goes on behind', 0, 3, 11.149533],
  ])('is reckoned reach by reach, %s', (_, climbKpa, onLph, feedKpa) => {
    const along = noFlow(3);
    expect(upstreamPressure(line(climbKpa), { count: 3, onLph, mostKpa: 1000 }, 10, along)).toBeCloseTo(feedKpa, 5);
    expect([...along.reachFlowsLph]).toEqual([6 + onLph, 4 + onLph, 2 + onLph]);
  });

  it('below none has outlets that give nothing and let the water by', () => {
    const along = noFlow(3);
    upstreamPressure(line(-5), { count: 3, onLph: 3, mostKpa: 1000 }, -1, along);
    expect([...along.flowsLph]).toEqual([0, 0, 0]);
    expect([...along.reachFlowsLph]).toEqual([3, 3, 3]);
  });

  it('is followed no further than the most that there can be', () => {
    expect(upstreamPressure(line(100), { count: 3, onLph: 0, mostKpa: 50 }, 10)).toBeLessThan(120);
  });
});
