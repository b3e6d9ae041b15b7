/** The oracle's own lines, held to published ones and to themselves; and the engine's held to them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Emitter } from '../../src/engine/line/emitter.ts';
import { type Lateral, lateral } from '../../src/engine/line/lateral.ts';
import { EPANET_CASES, type EpanetCase, lawOf, reachesOfCase } from '../engine/line/epanet-cases.ts';
import { christiansenSum } from '../published/formulas/christiansen.ts';
import { deadEnd, deadEndFlow, type Law, type Reach } from './dead-end.ts';
import { frictionOf, KPA_PER_METRE } from './pipe.ts';
import { halfOfRing } from './ring.ts';

describe('the same networks in EPANET 2.3 (US EPA, public domain), head in m', () => {
  const reachesOf = (network: EpanetCase): readonly Reach[] => {
    const { frictions, climbs } = reachesOfCase(network);
    const law = lawOf(network);
    return Array.from({ length: network.outlets }, (_, place) => {
      const friction = frictions[place] ?? Number.NaN;
      return { law, climbKpa: climbs[place] ?? Number.NaN, lossKpa: (flowLph) => friction * flowLph ** 1.852 };
    });
  };

  it.each(EPANET_CASES.filter(({ fed }) => fed === 'one end'))('fed at one end, $name', (network) => {
    const places = deadEnd(reachesOf(network), network.headM);
    expect(places[0]?.flowLph).toBeCloseTo(network.published.nearLph, 3);
    [1, network.outlets / 2, network.outlets].forEach((outlet, index) => {
      expect(places[outlet]?.kpa).toBeCloseTo(network.published.headsM[index] ?? Number.NaN, 4);
    });
  });

  // One that leads through to a second feed up the slope is no ring, and no garden has it.
  const rings = EPANET_CASES.filter(({ fed, name }) => fed === 'both ends' && !name.startsWith('through'));
  it.each(rings)('fed at both ends, $name', (network) => {
    const flowLph = deadEndFlow(halfOfRing(reachesOf(network)), network.headM);
    expect(flowLph).toBeCloseTo(network.published.nearLph, 3);
  });
});

const TUBE = { lengthM: 0.3, boreMm: 14.2 };

/** Outlets on equal reaches. */
function alike(outlets: number, law: Law, { lengthM, boreMm } = TUBE, riseMPerM = 0): readonly Reach[] {
  const reach = { law, lossKpa: frictionOf({ lengthM, boreMm }), climbKpa: riseMPerM * lengthM * KPA_PER_METRE };
  return Array.from({ length: outlets }, () => reach);
}

it.each([1, 5, 20, 100])('%d steady outlets lose the exact sum of Christiansen (1942)', (outlets) => {
  const places = deadEnd(
    alike(outlets, () => 2.3),
    170,
  );
  const full = frictionOf({ ...TUBE, lengthM: 0.3 * outlets })(2.3 * outlets);
  expect(170 - (places.at(-1)?.kpa ?? Number.NaN)).toBeCloseTo(christiansenSum(outlets) * full, 9);
});

const anyEmitter: fc.Arbitrary<Emitter> = fc.oneof(
  fc.record({
    kind: fc.constant('plain' as const),
    nominalFlowLph: fc.double({ min: 0.5, max: 20, noNaN: true }),
    nominalPressureKpa: fc.constant(140),
    exponent: fc.constantFrom(0.4, 0.5, 0.75, 1),
  }),
  fc.record({
    kind: fc.constant('compensating' as const),
    nominalFlowLph: fc.double({ min: 0.5, max: 20, noNaN: true }),
    leastPressureKpa: fc.double({ min: 10, max: 140, noNaN: true }),
  }),
);

/** Thin and wide, up and down, with much pressure and with hardly any. */
const anyLine = fc.record({
  topology: fc.constantFrom('dead-end' as const, 'loop' as const),
  outlets: fc.integer({ min: 1, max: 300 }),
  spacingM: fc.double({ min: 0.1, max: 1, noNaN: true }),
  insideDiameterMm: fc.double({ min: 3, max: 25, noNaN: true }),
  inletPressureKpa: fc.double({ min: 1, max: 400, noNaN: true }),
  riseMPerM: fc.integer({ min: -300, max: 300 }).map((perMille) => perMille / 1000),
  emitter: anyEmitter,
});

function lawOfEmitter(emitter: Emitter): Law {
  const { nominalFlowLph } = emitter;
  if (emitter.kind === 'compensating') {
    return (kpa) => (kpa > 0 ? nominalFlowLph * Math.sqrt(Math.min(1, kpa / emitter.leastPressureKpa)) : 0);
  }
  return (kpa) => (kpa > 0 ? nominalFlowLph * (kpa / emitter.nominalPressureKpa) ** emitter.exponent : 0);
}

function reachesOfLine({ outlets, spacingM, insideDiameterMm, riseMPerM = 0, emitter }: Lateral): readonly Reach[] {
  return alike(outlets, lawOfEmitter(emitter), { lengthM: spacingM, boreMm: insideDiameterMm }, riseMPerM);
}

it('on any line each outlet gives what its pressure makes it give, and each reach loses what its flow costs', () => {
  const lines = fc.sample(anyLine, { seed: 5, numRuns: 60 });
  for (const line of lines) {
    const reaches = reachesOfLine(line);
    const places = deadEnd(reaches, line.inletPressureKpa);
    places.slice(1).forEach(({ kpa, flowLph }, place) => {
      const { law, lossKpa, climbKpa } = reaches[place] as Reach;
      const onLph = places[place + 2]?.flowLph ?? 0;
      expect(Math.abs(flowLph - onLph - law(kpa))).toBeLessThan(1e-9 * flowLph);
      const before = places[place]?.kpa ?? Number.NaN;
      expect(Math.abs(before - kpa - lossKpa(flowLph) - climbKpa)).toBeLessThan(1e-9 * line.inletPressureKpa);
    });
    expect(places[0]?.kpa).toBeCloseTo(line.inletPressureKpa, 8);
  }
});

it('the engine’s line gives as much, to a millionth, uphill and downhill', () => {
  const unlike = fc.sample(anyLine, { seed: 3, numRuns: 400 }).flatMap((line) => {
    const reaches = reachesOfLine(line);
    const isRing = line.topology === 'loop';
    const flowLph = isRing
      ? 2 * deadEndFlow(halfOfRing(reaches), line.inletPressureKpa)
      : deadEndFlow(reaches, line.inletPressureKpa);
    const { inletFlowLph } = lateral(line);
    const isAlike = Math.abs(inletFlowLph - flowLph) <= 1e-6 * Math.max(inletFlowLph, flowLph);
    return isAlike ? [] : [{ line, inletFlowLph, flowLph }];
  });
  expect(unlike.slice(0, 3)).toEqual([]);
});
