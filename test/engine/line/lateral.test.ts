import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Emitter } from '../../../src/engine/line/emitter.ts';
import { type Lateral, lateral } from '../../../src/engine/line/lateral.ts';
import { fromSi } from '../../../src/engine/units.ts';
import { christiansenF, christiansenHalfSpacingF, christiansenSum } from '../../published/formulas/christiansen.ts';
import { pipeLossKpa } from '../../support/pipe-loss.ts';

/** Gives the same at any pressure that occurs here: what Christiansen's F takes for granted. */
const steady: Emitter = Object.freeze({ kind: 'compensating', nominalFlowLph: 2.3, leastPressureKpa: 0.001 });
const compensating: Emitter = Object.freeze({ kind: 'compensating', nominalFlowLph: 2.3, leastPressureKpa: 70 });
const plain: Emitter = Object.freeze({ kind: 'plain', nominalFlowLph: 2.3, nominalPressureKpa: 140, exponent: 0.5 });

const LINE: Lateral = Object.freeze({
  topology: 'dead-end',
  outlets: 100,
  spacingM: 0.3,
  insideDiameterMm: 14.2,
  inletPressureKpa: 170,
  emitter: plain,
});

const lastOf = (values: Float64Array) => values.at(-1) as number;

describe('friction along a dead end on level ground', () => {
  it.each([1, 2, 5, 10, 20, 50, 100, 300])(
    '%s steady outlets: the exact sum of Christiansen (1942), to 1e-9',
    (outlets) => {
      const { endPressureKpa } = lateral({ ...LINE, outlets, emitter: steady });
      const full = { flowLph: 2.3 * outlets, insideDiameterMm: 14.2, lengthM: 0.3 * outlets, hazenWilliamsC: 130 };
      expect(170 - endPressureKpa).toBeCloseTo(christiansenSum(outlets) * pipeLossKpa(full), 9);
    },
  );

  it.each([10, 11, 20, 50, 100, 300])("%s steady outlets: Christiansen's F (1942) within a hundredth", (outlets) => {
    const { endPressureKpa } = lateral({ ...LINE, outlets, emitter: steady });
    const full = { flowLph: 2.3 * outlets, insideDiameterMm: 14.2, lengthM: 0.3 * outlets, hazenWilliamsC: 130 };
    expect(Math.abs((170 - endPressureKpa) / (christiansenF(outlets) * pipeLossKpa(full)) - 1)).toBeLessThan(0.01);
  });

  it.each([10, 50])(
    '%s outlets, the first at half a spacing: that F (Keller and Bliesner 1990) within a hundredth',
    (outlets) => {
      const { endPressureKpa } = lateral({ ...LINE, outlets, leadM: 0.15, emitter: steady });
      const full = {
        flowLph: 2.3 * outlets,
        insideDiameterMm: 14.2,
        lengthM: 0.3 * (outlets - 0.5),
        hazenWilliamsC: 130,
      };
      const loss = christiansenHalfSpacingF(outlets) * pipeLossKpa(full);
      expect(Math.abs((170 - endPressureKpa) / loss - 1)).toBeLessThan(0.01);
    },
  );

  it('in so wide a tube that there is no friction every plain emitter has the inlet pressure and all are alike', () => {
    const { pressuresKpa, flowVariation, uniformity, inletFlowLph } = lateral({ ...LINE, insideDiameterMm: 5000 });
    for (const pressure of pressuresKpa) expect(pressure).toBeCloseTo(170, 9);
    expect(flowVariation).toBeCloseTo(0, 9);
    expect(uniformity).toBeCloseTo(1, 9);
    expect(inletFlowLph).toBeCloseTo(100 * 2.3 * Math.sqrt(170 / 140), 8);
  });

  it('a plain emitter gives what the pressure at its own place makes it give', () => {
    const { pressuresKpa, flowsLph } = lateral(LINE);
    flowsLph.forEach((flow, outlet) => {
      expect(flow).toBeCloseTo(2.3 * Math.sqrt((pressuresKpa[outlet] as number) / 140), 10);
    });
  });

  it('two emitters at each outlet are one of twice the flow', () => {
    const twice: Emitter = { ...plain, nominalFlowLph: 4.6 };
    expect(lateral({ ...LINE, emittersPerOutlet: 2 })).toEqual(lateral({ ...LINE, emitter: twice }));
  });

  it('measures its outlets from the inlet', () => {
    const { distancesM, lengthM, meetingM } = lateral({ ...LINE, outlets: 3, leadM: 1 });
    expect([...distancesM]).toEqual([1, 1.3, 1.6]);
    expect(lengthM).toBe(1.6);
    expect(meetingM).toBe(1.6);
  });
});

describe('a line on a slope', () => {
  it('fed uphill loses 0.433 psi for each foot of climb besides friction (irrigation handbooks)', () => {
    const level = lateral({ ...LINE, emitter: compensating });
    const uphill = lateral({ ...LINE, emitter: compensating, riseMPerM: 0.1 });
    const climbedFt = fromSi(0.1 * 30, 'elevation', 'us');
    const lostPsi = fromSi(level.endPressureKpa - uphill.endPressureKpa, 'pressure', 'us');
    expect(Math.abs(lostPsi / climbedFt / 0.433 - 1)).toBeLessThan(0.0015);
  });

  it('without friction loses exactly that at each outlet, and gains it downhill', () => {
    for (const riseMPerM of [0.2, -0.2]) {
      const { pressuresKpa, distancesM } = lateral({ ...LINE, insideDiameterMm: 5000, riseMPerM });
      distancesM.forEach((distance, outlet) => {
        expect(170 - (pressuresKpa[outlet] as number)).toBeCloseTo(9.80665 * riseMPerM * distance, 5);
      });
    }
  });

  it('downhill the least pressure is on the way, where the fall first outweighs the friction', () => {
    const { leastPressureKpa, endPressureKpa, pressuresKpa } = lateral({ ...LINE, outlets: 250, riseMPerM: -0.05 });
    expect(leastPressureKpa).toBeLessThan(endPressureKpa);
    expect(leastPressureKpa).toBeLessThan(pressuresKpa[0] as number);
  });
});

describe('a loop', () => {
  it.each([
    ['plain', plain],
    ['compensating', compensating],
    ['steady', steady],
  ])('of length 2L is two dead ends of L on level ground to 1e-6: %s emitters', (_, emitter) => {
    const deadEnd = lateral({ ...LINE, outlets: 150, leadM: 0.15, emitter });
    const loop = lateral({ ...LINE, topology: 'loop', outlets: 300, leadM: 0.15, emitter });
    expect(loop.lengthM).toBeCloseTo(2 * (deadEnd.lengthM + 0.15), 10);
    expect(loop.inletFlowLph).toBeCloseTo(2 * deadEnd.inletFlowLph, 6);
    expect(loop.endPressureKpa).toBeCloseTo(deadEnd.endPressureKpa, 6);
    expect(loop.meetingM).toBeCloseTo(loop.lengthM / 2, 6);
    deadEnd.pressuresKpa.forEach((pressure, outlet) => {
      expect(Math.abs((loop.pressuresKpa[outlet] as number) - pressure)).toBeLessThan(1e-6);
      expect(Math.abs((loop.pressuresKpa[299 - outlet] as number) - pressure)).toBeLessThan(1e-6);
      expect(Math.abs((loop.reachFlowsLph[outlet] as number) - (deadEnd.reachFlowsLph[outlet] as number))).toBeLessThan(
        1e-6,
      );
    });
  });

  it('with an odd number of outlets both sides share the middle one', () => {
    const { reachFlowsLph, flowsLph, meetingM, lengthM } = lateral({ ...LINE, topology: 'loop', outlets: 7 });
    expect(meetingM).toBeCloseTo(lengthM / 2, 9);
    expect(reachFlowsLph[3]).toBeCloseTo((flowsLph[3] as number) / 2, 9);
    expect(reachFlowsLph[4]).toBeCloseTo(-(flowsLph[3] as number) / 2, 9);
  });

  it('a ring up a slope and back is the same on both sides, lowest in pressure at the top', () => {
    const { pressuresKpa, meetingM, lengthM, endPressureKpa, leastPressureKpa } = lateral({
      ...LINE,
      topology: 'loop',
      outlets: 101,
      riseMPerM: 0.1,
    });
    expect(meetingM).toBeCloseTo(lengthM / 2, 9);
    expect(endPressureKpa).toBe(leastPressureKpa);
    for (let outlet = 0; outlet < 50; outlet += 1) {
      expect(pressuresKpa[outlet]).toBeCloseTo(pressuresKpa[100 - outlet] as number, 7);
    }
  });

  it('fed from below and above: compensating emitters keep the meeting in the middle, plain ones move it downhill', () => {
    const through: Lateral = { ...LINE, topology: 'loop', course: 'through', outlets: 300, riseMPerM: 0.08 };
    const even = lateral({ ...through, emitter: steady });
    const moved = lateral(through);
    expect(even.meetingM).toBeCloseTo(even.lengthM / 2, 6);
    expect(moved.meetingM).toBeLessThan(moved.lengthM / 2 - 0.3);
    expect(moved.reachFlowsLph[0]).toBeGreaterThan(-lastOf(moved.reachFlowsLph));
  });

  it('fed downhill it is the same line seen from the other end', () => {
    const up: Lateral = { ...LINE, topology: 'loop', course: 'through', outlets: 80, riseMPerM: 0.05 };
    const fromBelow = lateral(up);
    const topPressureKpa = 170 - 0.05 * fromBelow.lengthM * 9.80665;
    const fromAbove = lateral({ ...up, riseMPerM: -0.05, inletPressureKpa: topPressureKpa });
    fromAbove.pressuresKpa.toReversed().forEach((pressure, outlet) => {
      expect(pressure).toBeCloseTo(fromBelow.pressuresKpa[outlet] as number, 3);
    });
  });
});

describe('a line that asks too much of its pressure', () => {
  it('uphill is dry from where the climb has used the pressure up, at 0 flow and no NaN', () => {
    const { state, wetOutlets, pressuresKpa, flowsLph, distancesM } = lateral({ ...LINE, riseMPerM: 1 });
    const highestM = 170 / 9.80665;
    expect(state).toBe('partly-dry');
    expect(distancesM[wetOutlets - 1]).toBeLessThan(highestM);
    expect(distancesM[wetOutlets]).toBeGreaterThan(highestM - 0.6);
    expect(lastOf(pressuresKpa)).toBe(0);
    expect(lastOf(flowsLph)).toBe(0);
    for (const value of [...pressuresKpa, ...flowsLph]) expect(value).toBeGreaterThanOrEqual(0);
  });

  it.each(['dead-end', 'loop'] as const)(
    '%s of 20,000 outlets in a quarter-inch tube: what arrives no longer depends on the length',
    (topology) => {
      const long: Lateral = { ...LINE, topology, insideDiameterMm: 4.3, outlets: 20_000 };
      const { state, inletFlowLph, wetOutlets, flowsLph, leastPressureKpa } = lateral(long);
      expect(state).toBe('partly-dry');
      expect(wetOutlets).toBeLessThan(1000);
      expect(leastPressureKpa).toBeLessThan(1e-6);
      expect(flowsLph.every((flow) => flow >= 0)).toBe(true);
      expect(inletFlowLph).toBeCloseTo(lateral({ ...long, outlets: 10_000 }).inletFlowLph, 6);
    },
  );

  it.each([0, -20])('without pressure at the inlet (%s kPa) it is dry', (inletPressureKpa) => {
    for (const topology of ['dead-end', 'loop'] as const) {
      const profile = lateral({ ...LINE, topology, inletPressureKpa });
      expect(profile.state).toBe('dry');
      expect(profile.inletFlowLph).toBe(0);
      expect(profile.wetOutlets).toBe(0);
      expect(profile.flowVariation).toBe(0);
      expect(profile.uniformity).toBe(0);
    }
  });

  it('of a loop whose upper feed has no pressure only the lower one gives water', () => {
    const { state, flowsLph, reachFlowsLph } = lateral({ ...LINE, topology: 'loop', course: 'through', riseMPerM: 1 });
    expect(state).toBe('partly-dry');
    expect(lastOf(reachFlowsLph)).toBeCloseTo(0, 12);
    expect(flowsLph[0]).toBeGreaterThan(2);
  });

  it.each([
    [{ outlets: 0 }, 'The number of outlets is 0; it must be 1 or more.'],
    [{ outlets: 2.5 }, 'The number of outlets is 2.5; it must be whole.'],
    [{ spacingM: 0 }, 'The spacing of outlets (m) is 0; it must be above 0.'],
    [{ leadM: -1 }, 'The tube before the first outlet (m) is -1; it must be 0 or more.'],
    [{ insideDiameterMm: -1 }, 'The inside diameter (mm) is -1; it must be above 0.'],
    [{ inletPressureKpa: Number.NaN }, 'The pressure at the inlet (kPa) is NaN; it must be a number.'],
    [{ riseMPerM: Number.POSITIVE_INFINITY }, 'The rise of the line (m per m) is Infinity; it must be a number.'],
    [{ emittersPerOutlet: 0 }, 'The emitters at an outlet is 0; it must be above 0.'],
  ])('%o is refused in words', (wrong, words) => {
    expect(() => lateral({ ...LINE, ...wrong })).toThrow(new RangeError(words));
  });
});

const anyEmitter: fc.Arbitrary<Emitter> = fc.oneof(
  fc.record({
    kind: fc.constant('plain' as const),
    nominalFlowLph: fc.double({ min: 0.5, max: 20, noNaN: true }),
    nominalPressureKpa: fc.constant(140),
    exponent: fc.double({ min: 0.1, max: 1, noNaN: true }),
  }),
  fc.record({
    kind: fc.constant('compensating' as const),
    nominalFlowLph: fc.double({ min: 0.5, max: 20, noNaN: true }),
    leastPressureKpa: fc.double({ min: 10, max: 140, noNaN: true }),
  }),
);

const anyLine: fc.Arbitrary<Lateral> = fc.record({
  topology: fc.constantFrom('dead-end' as const, 'loop' as const),
  course: fc.constantFrom('ring' as const, 'through' as const),
  outlets: fc.integer({ min: 1, max: 120 }),
  spacingM: fc.double({ min: 0.1, max: 1, noNaN: true }),
  insideDiameterMm: fc.double({ min: 3, max: 25, noNaN: true }),
  inletPressureKpa: fc.double({ min: 1, max: 400, noNaN: true }),
  riseMPerM: fc.integer({ min: -300, max: 300 }).map((perMille) => perMille / 1000),
  emitter: anyEmitter,
});

describe('any line', () => {
  it('no water is lost or made: each reach carries what the outlets beyond it give', () => {
    fc.assert(
      fc.property(anyLine, (line) => {
        const { flowsLph, reachFlowsLph, inletFlowLph, pressuresKpa } = lateral(Object.freeze(line));
        const beyond = line.topology === 'loop' ? lastOf(reachFlowsLph) : 0;
        expect((reachFlowsLph[0] as number) - beyond).toBeCloseTo(inletFlowLph, 8);
        flowsLph.forEach((flow, outlet) => {
          const next = reachFlowsLph[outlet + 1] ?? 0;
          expect((reachFlowsLph[outlet] as number) - next).toBeCloseTo(flow, 8);
          expect(flow).toBeGreaterThanOrEqual(0);
          expect(pressuresKpa[outlet]).toBeGreaterThanOrEqual(0);
        });
      }),
    );
  });

  // Near no pressure at all the flow of an emitter with a small exponent jumps by more than the digits of a number can
  // follow.
  it('where every outlet has 0.01 kPa, pressures along it differ by the friction and climb between them', () => {
    fc.assert(
      fc.property(anyLine, (line) => {
        const deadEnd = lateral({ ...line, topology: 'dead-end' });
        fc.pre(deadEnd.leastPressureKpa > 0.01);
        const { pressuresKpa, reachFlowsLph } = deadEnd;
        let before = line.inletPressureKpa;
        pressuresKpa.forEach((pressure, outlet) => {
          const pipe = { insideDiameterMm: line.insideDiameterMm, lengthM: line.spacingM };
          const C = line.insideDiameterMm < 20 ? 130 : 140;
          const friction = pipeLossKpa({ ...pipe, hazenWilliamsC: C, flowLph: reachFlowsLph[outlet] as number });
          const climb = (line.riseMPerM ?? 0) * line.spacingM * 9.80665;
          expect(before - pressure).toBeCloseTo(friction + climb, 4);
          before = pressure;
        });
      }),
    );
  });

  it('a loop is never worse than the same tube as a dead end', () => {
    fc.assert(
      fc.property(anyLine, (line) => {
        const level = { ...line, riseMPerM: 0 };
        const loop = lateral({ ...level, topology: 'loop' });
        const deadEnd = lateral({ ...level, topology: 'dead-end' });
        expect(loop.leastPressureKpa).toBeGreaterThanOrEqual(deadEnd.leastPressureKpa - 1e-7);
      }),
    );
  });

  it('on level ground or uphill one outlet more never raises the last pressure', () => {
    fc.assert(
      fc.property(anyLine, (line) => {
        const shorter: Lateral = { ...line, topology: 'dead-end', riseMPerM: Math.abs(line.riseMPerM ?? 0) };
        const longer: Lateral = { ...shorter, outlets: line.outlets + 1 };
        expect(lateral(longer).leastPressureKpa).toBeLessThanOrEqual(lateral(shorter).leastPressureKpa + 1e-7);
        expect(lateral(longer).inletFlowLph).toBeGreaterThanOrEqual(lateral(shorter).inletFlowLph - 1e-7);
      }),
    );
  });

  it('a wider tube of the same plastic never has less pressure at its least outlet', () => {
    fc.assert(
      fc.property(anyLine, fc.double({ min: 1, max: 3, noNaN: true }), (line, times) => {
        const narrow: Lateral = { ...line, hazenWilliamsC: 130 };
        const wide: Lateral = { ...narrow, insideDiameterMm: line.insideDiameterMm * times };
        expect(lateral(wide).leastPressureKpa).toBeGreaterThanOrEqual(lateral(narrow).leastPressureKpa - 1e-6);
      }),
    );
  });
});
