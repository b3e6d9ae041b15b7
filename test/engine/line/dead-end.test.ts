import { describe, expect, it } from 'vitest';
import { solveDeadEnd } from '../../../src/engine/line/dead-end.ts';
import { EPANET_CASES, lawOf, reachesOfCase } from './epanet-cases.ts';

describe('the same networks in EPANET 2.3 (US EPA, public domain), head in m', () => {
  it.each(EPANET_CASES.filter(({ fed }) => fed === 'one end'))('dead end, $name', (network) => {
    const { outlets, headM, published } = network;
    const flow = solveDeadEnd({
      reaches: reachesOfCase(network),
      law: lawOf(network),
      outlets,
      lastShare: 1,
      feedPressureKpa: headM,
    });
    const at = [0, outlets / 2 - 1, outlets - 1];
    at.forEach((outlet, index) => {
      expect(flow.pressuresKpa[outlet]).toBeCloseTo(published.headsM[index] as number, 4);
      expect(flow.flowsLph[outlet]).toBeCloseTo(published.flowsLph[index] as number, 4);
    });
    expect(flow.reachFlowsLph[0]).toBeCloseTo(published.nearLph, 3);
  });
});
