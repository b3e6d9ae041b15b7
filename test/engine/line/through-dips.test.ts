/**
 * Downhill lines whose least pressure lies on the way, so near to none that the pressure at their far end does not tell it. They are held
 * to the laws that make a line (each outlet gives what its pressure makes it give, each reach loses what its flow costs, the feed has what
 * it has) from the feed on, and to figures that the independent solution in test/oracle comes to.
 */
import { describe, expect, it } from 'vitest';
import { emitterLaw } from '../../../src/engine/line/emitter.ts';
import { frictionLossKpa } from '../../../src/engine/line/friction.ts';
import { type Lateral, lateral } from '../../../src/engine/line/lateral.ts';
import { reachesOf } from '../../../src/engine/line/reaches.ts';

const plain = (nominalFlowLph: number) =>
  ({ kind: 'plain', nominalFlowLph, nominalPressureKpa: 140, exponent: 0.5 }) as const;
const compensating = (nominalFlowLph: number, leastPressureKpa: number) =>
  ({ kind: 'compensating', nominalFlowLph, leastPressureKpa }) as const;

const LINES: readonly { readonly name: string; readonly line: Lateral; readonly flowLph: number }[] = [
  {
    name: 'loop of 3 mm, a slope of 24 %',
    line: {
      topology: 'loop',
      outlets: 280,
      spacingM: 0.9857,
      insideDiameterMm: 3,
      riseMPerM: -0.241,
      inletPressureKpa: 274.8,
      emitter: plain(20),
    },
    flowLph: 216.91891,
  },
  {
    name: 'dead end of 3 mm, hardly any pressure',
    line: {
      topology: 'dead-end',
      outlets: 188,
      spacingM: 0.857,
      insideDiameterMm: 3,
      riseMPerM: -0.129,
      inletPressureKpa: 1,
      emitter: plain(3.7456),
    },
    flowLph: 11.2877706,
  },
  {
    name: 'loop of 7 mm, a slope of 0.4 %',
    line: {
      topology: 'loop',
      outlets: 168,
      spacingM: 0.786,
      insideDiameterMm: 7.03,
      riseMPerM: -0.004,
      inletPressureKpa: 57.2,
      emitter: compensating(15.55, 10),
    },
    flowLph: 572.493354,
  },
  {
    name: 'dead end of 3 mm, a slope of 0.4 %',
    line: {
      topology: 'dead-end',
      outlets: 273,
      spacingM: 0.4705,
      insideDiameterMm: 3.119,
      riseMPerM: -0.004,
      inletPressureKpa: 16.8,
      emitter: compensating(0.5, 79.19),
    },
    flowLph: 11.7109002,
  },
];

describe.each(LINES)('$name', ({ line, flowLph }) => {
  const { pressuresKpa, flowsLph, reachFlowsLph, inletFlowLph } = lateral(line);

  it('gives what the oracle has', () => {
    expect(Math.abs(inletFlowLph / flowLph - 1)).toBeLessThan(1e-8);
  });

  it('agrees with itself from the feed on', () => {
    const { frictions, climbs } = reachesOf(line);
    const law = emitterLaw(line.emitter);
    const fed = line.topology === 'loop' ? line.outlets / 2 : line.outlets;
    let pressureKpa = line.inletPressureKpa;
    for (let outlet = 0; outlet < fed; outlet += 1) {
      const flow = reachFlowsLph[outlet] as number;
      pressureKpa -= frictionLossKpa(frictions[outlet] as number, flow) + (climbs[outlet] as number);
      expect(Math.abs((pressuresKpa[outlet] as number) - Math.max(0, pressureKpa))).toBeLessThan(1e-6);
      expect(flowsLph[outlet]).toBeCloseTo(law(pressuresKpa[outlet] as number), 9);
    }
  });

  it('has a least pressure that lies on the way', () => {
    const least = pressuresKpa.indexOf(Math.min(...pressuresKpa));
    expect(least).toBeGreaterThan(0);
    expect(least).toBeLessThan(line.outlets - 1);
    expect(pressuresKpa[0]).toBeGreaterThan(0);
  });
});
