/** What lines give behind solid tube: the oracle's held to a case by hand, the engine's held to the oracle's. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { GardenLine, GardenSupply } from '../../src/engine/garden.ts';
import { plantingFlows } from '../../src/engine/line/planting-flows.ts';
import { between } from '../support/garden-numbers.ts';
import { arbitraryLaidLine, laidLine, plantingWith } from '../support/laid-line.ts';
import { flowsOn } from './planting-flow.ts';

const DAY = 20_100;

function flowsBehind(lines: readonly GardenLine[], pressureKpa: number): readonly number[] {
  const supply = { sources: [{ from: 0, pressureKpa }] } as unknown as GardenSupply;
  return flowsOn(plantingWith(lines), supply, DAY).map(({ flowLph }) => flowLph);
}

const sum = (flows: readonly number[]) => flows.reduce((total, flow) => total + flow, 0);

const tubeOf = (
  laid: Pick<GardenLine, 'insideDiameterMm'> & { readonly lengthM: number; readonly riseMPerM?: number },
): GardenLine => laidLine({ outlets: 0, kind: 'solid', emitterFlowLph: 0, ...laid });

/**
 * By hand: 40 m of 4 mm tube, C = 130 (NEH 623 ch. 7), lose 100 kPa to 30.8 L/h (Hazen-Williams: 10.67 L Q^1.852 / (C^1.852 d^4.87) m of water). Behind it a
 * wide line of one emitter, 10 m long, that falls 1 m: 9.80665 kPa press 60 L/h through it, which no 100 kPa bring.
 */
it('a line that would drain faster than its tube brings water has what the tube brings', () => {
  const tube = tubeOf({ lengthM: 40, insideDiameterMm: 4 });
  const line = laidLine({
    outlets: 1,
    spacingM: 10,
    insideDiameterMm: 60,
    riseMPerM: -0.1,
    compensating: false,
    emitterFlowLph: 60 * Math.sqrt((20 * 6.894757293168361) / 9.80665),
  });
  expect(sum(flowsBehind([tube, line], 100))).toBeCloseTo(30.8, 1);
  const lostKpa = 100 * (60 / 30.83) ** 1.852;
  expect(sum(flowsBehind([tube, line], 1.02 * lostKpa))).toBeGreaterThan(60);
  expect(sum(flowsBehind([tube, line], 0.98 * lostKpa))).toBeCloseTo(60 * 0.98 ** (1 / 1.852), 1);
});

/** Thin tube, up and down; lines down a slope, and some level or up one. */
const anyFed = fc.record({
  tube: fc
    .record({ lengthM: between(1, 40), insideDiameterMm: between(3, 12), riseMPerM: between(-0.1, 0.1) })
    .map(tubeOf),
  lines: fc.array(
    fc
      .tuple(arbitraryLaidLine, fc.oneof(between(-0.1, -0.02), between(-0.02, 0.05)))
      .map(([line, riseMPerM]) => ({ ...line, riseMPerM })),
    { minLength: 1, maxLength: 2 },
  ),
  pressureKpa: between(1, 300),
});

it('the engine’s lines give as much, to a millionth, whether their tubes bring enough or not', {
  timeout: 60_000,
}, () => {
  let scarce = 0;
  for (const { tube, lines, pressureKpa } of fc.sample(anyFed, { seed: 11, numRuns: 200 })) {
    const laid = [tube, ...lines];
    const sources = [{ from: 0, pressureKpa }];
    const [flow = expect.unreachable()] = plantingFlows(plantingWith(laid), { sources, efficiency: 0.8 });
    const flows = flowsBehind(laid, pressureKpa);
    const close = 1e-6 * Math.max(1, sum(flows));
    expect(Math.abs(flow.flowLph - sum(flows))).toBeLessThan(close);
    expect(flow.linesLph.every((lph, line) => Math.abs(lph - (flows[line] ?? 0)) < close)).toBe(true);
    if ((flow.pressureKpa ?? 1) < 1e-9 && flow.flowLph > 0) scarce += 1;
  }
  expect(scarce).toBeGreaterThan(20);
});
