import { describe, expect, it } from 'vitest';
import { lineFlowLph } from '../../../src/engine/line/line-profile.ts';
import { liesOn, plantingFlows } from '../../../src/engine/line/planting-flows.ts';
import { gardenOf } from '../../../src/plan/garden-of.ts';
import { laidLine, plantingWith, pointLine } from '../../support/laid-line.ts';
import { oneBed, tomatoes, zone } from '../../support/small-plans.ts';

const plain = { compensating: false, leastPressureKpa: 0 } as const;
const source = (pressureKpa: number, from = 20_000) => ({ from, pressureKpa });
const flows = (lines: Parameters<typeof plantingWith>[0], sources: ReturnType<typeof source>[] = []) =>
  plantingFlows(plantingWith(lines), { sources, efficiency: 0.8 });

describe('what the lines of a planting give', () => {
  it('is their nominal flow where no pressure is known', () => {
    expect(flows([laidLine({ outlets: 100, emitterFlowLph: 2, ...plain })])).toEqual([
      { from: 20_000, to: 20_200, flowLph: 200, efficiency: 0.8, pressureKpa: undefined, linesLph: [200] },
    ]);
  });

  it('is, to the last digit, what is printed on compensating emitters where their pressure is there', () => {
    expect(flows([laidLine({ outlets: 100, emitterFlowLph: 2 })], [source(250)])[0]?.flowLph).toBe(200);
    expect(flows([laidLine({ outlets: 100, emitterFlowLph: 2 })], [source(40)])[0]?.flowLph).toBeLessThan(
      200 * Math.sqrt(40 / 70),
    );
  });

  it('of all that lie at once is their sum, each from its first day to its last', () => {
    const lines = [
      laidLine({ outlets: 100, emitterFlowLph: 2 }),
      laidLine({ outlets: 50, emitterFlowLph: 2, from: 20_010, to: 20_019 }),
    ];
    expect(flows(lines).map(({ from, to, flowLph }) => [from, to, flowLph])).toEqual([
      [20_000, 20_009, 200],
      [20_010, 20_019, 300],
      [20_020, 20_200, 200],
    ]);
    expect(liesOn(lines[1] ?? expect.unreachable(), 20_020)).toBe(false);
  });

  it('changes with the source, and not with a source of the same pressure', () => {
    const line = laidLine({ outlets: 20, ...plain });
    const found = flows([line], [source(100), source(100, 20_030), source(200, 20_060)]);
    expect(found.map(({ from, to }) => [from, to])).toEqual([
      [20_000, 20_059],
      [20_060, 20_200],
    ]);
    // A short line loses next to nothing: q goes with the square root of the pressure.
    expect((found[1]?.flowLph as number) / (found[0]?.flowLph as number)).toBeCloseTo(Math.SQRT2, 2);
  });

  it('is nothing without pressure, and days without an emitter are left out', () => {
    expect(flows([laidLine()], [source(0)])).toMatchObject([{ flowLph: 0, pressureKpa: 0, linesLph: [0] }]);
    expect(flows([pointLine(0, { kind: 'solid' })], [source(200)])).toEqual([]);
  });

  it('behind a solid line is what the pressure there gives: source less friction of the whole flow less climb', () => {
    const solid = pointLine(0, { kind: 'solid', lengthM: 30, insideDiameterMm: 10, riseMPerM: 0.02 });
    const line = laidLine({ outlets: 100, emitterFlowLph: 2, ...plain });
    const [flow = expect.unreachable()] = flows([solid, line], [source(150)]);
    const kpa = flow.pressureKpa as number;
    const ground = plantingWith([line]);
    expect(flow.flowLph).toBeCloseTo(lineFlowLph(line, ground, kpa), 9);
    // Hazen-Williams in SI, C = 140: 10.67 L Q^1.852 / (C^1.852 d^4.87).
    const headM = (10.67 * 30 * (flow.flowLph / 3_600_000 / 130) ** 1.852) / 0.01 ** 4.87;
    const headOf140 = headM * (130 / 140) ** 1.852;
    const lost = 150 - kpa - 9.80665 * 0.6;
    expect([headM * 9.80665, headOf140 * 9.80665].some((loss) => Math.abs(loss - lost) < 1e-6)).toBe(true);
  });

  /**
   * By hand: 40 m of 4 mm tube, level, C = 130 (NEH 623 ch. 7). Hazen-Williams in SI, 10.67 L Q^1.852 / (C^1.852 d^4.87): 100 kPa are 10.197 m
   * of water, all of which Q = 8.57e-6 m3/s, 30.8 L/h, lose. Behind it one emitter at the end of 10 m of 60 mm tube that fall 1 m: 9.80665 kPa
   * press 60 L/h through it, if the line stays full. The tube would lose 100 (60 / 30.8)^1.852 = 343 kPa to them, and has 100: it brings 30.8,
   * which stand 0.26 m high above the emitter ((30.8 / 60)^2 of the metre), and above that there is air.
   */
  describe('down a slope behind a thin tube', () => {
    const tube = pointLine(0, { kind: 'solid', lengthM: 40, insideDiameterMm: 4 });
    const NOMINAL_KPA = 20 * 6.894757293168361;
    const draining = (lph: number, change: object = {}) =>
      pointLine(1, {
        ...plain,
        emitterFlowLph: lph * Math.sqrt(NOMINAL_KPA / 9.80665),
        flowLph: lph * Math.sqrt(NOMINAL_KPA / 9.80665),
        insideDiameterMm: 60,
        riseMPerM: -0.1,
        ...change,
      });
    const flowFrom = (lines: Parameters<typeof plantingWith>[0], sourceKpa: number) => {
      const ground = plantingWith(lines, { areaM2: 100 });
      const [flow = expect.unreachable()] = plantingFlows(ground, { sources: [source(sourceKpa)], efficiency: 0.8 });
      return flow;
    };
    const lostKpa = (lph: number) => (9.80665 * 10.67 * 40 * (lph / 3_600_000 / 130) ** 1.852) / 0.004 ** 4.87;

    it('is what the tube brings at all the pressure that there is', () => {
      const { flowLph, pressureKpa } = flowFrom([tube, draining(60)], 100);
      expect(flowLph).toBeCloseTo(30.8, 1);
      expect(lostKpa(flowLph)).toBeCloseTo(100, 9);
      expect(pressureKpa).toBeCloseTo(0, 9);
    });

    it('is balanced at the tube and the emitters, each line with as much less as the others', () => {
      const { flowLph, linesLph } = flowFrom([tube, draining(40), draining(20)], 100);
      expect(lostKpa(flowLph)).toBeCloseTo(100, 9);
      expect(linesLph).toEqual([0, expect.closeTo((2 / 3) * flowLph, 3), expect.closeTo(flowLph / 3, 3)]);
    });

    it('rises with the source without a leap, on to where the tube brings as much as the fall drains', () => {
      const drainsKpa = lostKpa(60);
      expect(drainsKpa).toBeCloseTo(343, 0);
      const at = [0.25, 0.5, 0.99, 1.01, 1.5].map((share) => flowFrom([tube, draining(60)], share * drainsKpa));
      const shares = at.map(({ flowLph }) => flowLph / 60);
      expect(shares.slice(0, 3)).toEqual([0.25, 0.5, 0.99].map((share) => expect.closeTo(share ** (1 / 1.852), 4)));
      expect(shares[3]).toBeCloseTo(1, 1);
      expect(shares[4]).toBeGreaterThan(shares[3] as number);
      // Beyond, the emitter has the pressure behind the tube and its fall: q = k H^0.5.
      const { flowLph, pressureKpa = Number.NaN } = at[4] ?? expect.unreachable();
      expect(flowLph / 60).toBeCloseTo(Math.sqrt((pressureKpa + 9.80665) / 9.80665), 4);
      expect(lostKpa(flowLph) + pressureKpa).toBeCloseTo(1.5 * drainsKpa, 6);
    });

    it('is nothing where the tube climbs higher than the pressure lifts, however deep the line falls', () => {
      const climbing = { ...tube, riseMPerM: 0.3 };
      expect(flowFrom([climbing, draining(60)], 100).flowLph).toBe(0);
    });
  });

  it('is not lessened by dripline too short for an emitter, which lies beside the others and is no tube in front of them', () => {
    const line = laidLine({ outlets: 100, emitterFlowLph: 2, ...plain });
    const stub = laidLine({ outlets: 0, lengthM: 0.25, insideDiameterMm: 4 });
    const [flow = expect.unreachable()] = flows([stub, line], [source(150)]);
    expect(flow).toMatchObject({ pressureKpa: 150, linesLph: [0, lineFlowLph(line, plantingWith([line]), 150)] });
  });

  it('weighs the efficiencies of its lines by their flow', () => {
    const lines = [
      laidLine({ outlets: 100, emitterFlowLph: 2, efficiency: 0.9 }),
      laidLine({ outlets: 50, emitterFlowLph: 2 }),
    ];
    expect(flows(lines)[0]?.efficiency).toBeCloseTo((0.9 * 200 + 0.8 * 100) / 300, 12);
  });
});

describe('a barrel 3 ft above the bed, on one 8 ft row of 0.5 gph plain dripline every 6 in', () => {
  const line = {
    kind: 'dripline',
    flow: 0.5,
    spacing: 6,
    layout: { kind: 'rows', rows: 1, length: 8 },
    emitter: { kind: 'plain', exponent: 0.5 },
  } as const;
  const bed = (supply: Parameters<typeof oneBed>[0]) =>
    gardenOf(oneBed({ zones: [zone({ plantings: [tomatoes({ lines: [line] })] })], ...supply })).zones[0]?.plantings[0];
  const GPH = 3.785411784;

  it('gives 2.04 gph and not the 8 gph that are printed on 16 emitters', () => {
    const barrel = bed({ supply: { sources: [{ name: 'Barrel', waterHeight: 3 }] } });
    expect(barrel?.lines[0]?.emitters).toBe(16);
    // 3 ft are 1.3 psi; 0.5 gph x sqrt(1.3 / 20) x 16 = 2.04 gph, less a trace of friction.
    expect((barrel?.flows[0]?.pressureKpa as number) / 6.894757293168).toBeCloseTo(1.3, 2);
    expect((barrel?.flows[0]?.flowLph as number) / GPH).toBeCloseTo(2.04, 2);
  });

  it('and 8 gph at 20 psi, or where nobody knows the pressure', () => {
    expect((bed({})?.flows[0]?.flowLph as number) / GPH).toBeCloseTo(8, 9);
    const main = bed({ supply: { sources: [{ name: 'Main', pressure: 20 }] } });
    expect((main?.flows[0]?.flowLph as number) / GPH).toBeCloseTo(8, 2);
  });
});
