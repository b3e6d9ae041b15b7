import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../src/engine/calendar.ts';
import type { PlanLine } from '../../../src/plan/schema/plan-schema.ts';
import { lineOf } from '../../../src/plan/to-garden/line.ts';

const FIRST_DAY = dayNumber('2027-04-05');
const bed = { units: 'us', firstDay: FIRST_DAY, plants: undefined, canopyDiameterM: 2 } as const;
const nineShrubs = { units: 'us', firstDay: FIRST_DAY, plants: 9, canopyDiameterM: 0.9144 } as const;

const dripline = (layout: Extract<PlanLine, { kind: 'dripline' }>['layout'], spacing = 12): PlanLine => ({
  kind: 'dripline',
  flow: 0.9,
  spacing,
  layout,
});

describe('emitters of a dripline: as many whole spacings as a run holds', () => {
  it.each<[string, PlanLine, number]>([
    ['20 ft at 12 in', dripline({ kind: 'length', length: 20 }), 20],
    ['20.9 ft at 12 in', dripline({ kind: 'length', length: 20.9 }), 20],
    ['0.9 ft at 12 in', dripline({ kind: 'length', length: 0.9 }), 0],
    ['4 rows of 20.5 ft at 18 in: 13 each', dripline({ kind: 'rows', rows: 4, length: 20.5 }, 18), 52],
  ])('%s', (_name, line, emitters) => {
    expect(lineOf(line, bed).emitters).toBe(emitters);
  });

  it('a length that is a whole number of spacings in any unit holds them all', () => {
    for (let feet = 1; feet <= 200; feet++) {
      expect(lineOf(dripline({ kind: 'length', length: feet }), bed).emitters).toBe(feet);
      expect(lineOf(dripline({ kind: 'length', length: feet * 0.3 }, 30), { ...bed, units: 'metric' }).emitters).toBe(
        feet,
      );
    }
  });

  it('a loop round each of 9 plants 36 in across: pi x 36 in / 18 in are 6 each', () => {
    const line = lineOf(dripline({ kind: 'loops', perPlant: 1 }, 18), nineShrubs);
    expect(line).toMatchObject({ emitters: 54, runs: 9 });
    expect(line.lengthM).toBeCloseTo(9 * Math.PI * 0.9144, 12);
  });

  it('two loops of a diameter of their own', () => {
    const line = lineOf(dripline({ kind: 'loops', perPlant: 2, diameter: 24 }, 18), nineShrubs);
    // pi x 24 / 18 = 4.19.
    expect(line).toMatchObject({ emitters: 9 * 2 * 4, runs: 18 });
  });

  it('an area counts as one plant', () => {
    expect(lineOf(dripline({ kind: 'loops', perPlant: 1 }), bed).runs).toBe(1);
    // Round a circle of 2 m: 20.6 spacings of 12 in.
    expect(lineOf(dripline({ kind: 'loops', perPlant: 1 }), bed).emitters).toBe(21);
  });

  it('a loop is cut to fit: 84 in across and 12 in apart are 21.99 spacings, so 22 emitters, and never none', () => {
    expect(lineOf(dripline({ kind: 'loops', perPlant: 1, diameter: 84 }), nineShrubs)).toMatchObject({
      emitters: 9 * 22,
    });
    expect(lineOf(dripline({ kind: 'loops', perPlant: 1, diameter: 1 }), nineShrubs)).toMatchObject({ emitters: 9 });
  });
});

describe('a line as it lies', () => {
  it('has a last day where the plan says so', () => {
    expect(lineOf({ kind: 'solid', from: '2027-06-01', to: '2027-06-13' }, bed)).toMatchObject({
      from: dayNumber('2027-06-01'),
      to: dayNumber('2027-06-13'),
    });
    expect(lineOf({ kind: 'solid' }, bed).to).toBeUndefined();
  });

  it('without emitters has the length, bore and rise of its tube; usual tubing is 0.6 in inside', () => {
    const line = lineOf({ kind: 'solid', length: 50, insideDiameter: 0.82, risePercent: 4 }, bed);
    expect(line).toMatchObject({ emitters: 0, flowLph: 0, riseMPerM: 0.04 });
    expect(line.lengthM).toBeCloseTo(15.24, 12);
    expect(line.insideDiameterMm).toBeCloseTo(20.828, 12);
    expect(lineOf({ kind: 'solid' }, bed).insideDiameterMm).toBeCloseTo(15.24, 12);
    expect(lineOf({ kind: 'solid' }, bed).lengthM).toBeUndefined();
  });
});

describe('emitters set by the piece', () => {
  it('point emitters are for each plant where plants are counted', () => {
    expect(lineOf({ kind: 'point', flow: 1, count: 2 }, nineShrubs).emitters).toBe(18);
    expect(lineOf({ kind: 'point', flow: 1, count: 2 }, bed).emitters).toBe(2);
  });

  it('micro-sprays are for the whole planting', () => {
    expect(lineOf({ kind: 'spray', flow: 10, count: 3 }, nineShrubs).emitters).toBe(3);
  });

  it('a solid line gives no water', () => {
    expect(lineOf({ kind: 'solid' }, bed)).toMatchObject({ kind: 'solid', emitters: 0, flowLph: 0 });
  });
});

describe('the rest of a line', () => {
  it('its flow is that of all emitters: 80 of 0.9 gph are 272.55 L/h', () => {
    const line = lineOf(dripline({ kind: 'rows', rows: 4, length: 20 }), bed);
    expect(line.flowLph).toBeCloseTo(80 * 0.9 * 3.785411784, 9);
  });

  it('it lies from its day, or from the planting’s first', () => {
    expect(lineOf({ kind: 'solid', from: '2027-06-01' }, bed).from).toBe(dayNumber('2027-06-01'));
    expect(lineOf({ kind: 'solid' }, bed).from).toBe(FIRST_DAY);
  });

  it('what is left out is usual 17 mm dripline, level, dead-ended, compensating from 10 psi', () => {
    expect(lineOf(dripline({ kind: 'length', length: 9 }), bed)).toMatchObject({
      topology: 'dead-end',
      slopeSide: 'level',
      riseMPerM: 0,
      compensating: true,
      insideDiameterMm: 0.56 * 25.4,
    });
    expect(lineOf(dripline({ kind: 'length', length: 9 }), bed).leastPressureKpa).toBeCloseTo(10 * 6.894757, 4);
  });

  it('what is given is taken', () => {
    const line: PlanLine = {
      kind: 'point',
      flow: 2,
      count: 1,
      topology: 'loop',
      slopeSide: 'uphill',
      risePercent: -5,
      insideDiameter: 0.17,
      emitter: { kind: 'plain', exponent: 0.75 },
    };
    expect(lineOf(line, bed)).toMatchObject({
      topology: 'loop',
      slopeSide: 'uphill',
      riseMPerM: -0.05,
      compensating: false,
      leastPressureKpa: 0,
      exponent: 0.75,
    });
    expect(lineOf(line, bed).insideDiameterMm).toBeCloseTo(4.318, 12);
    const compensating = lineOf({ ...line, emitter: { kind: 'compensating', leastPressure: 15 } }, bed);
    expect(compensating.leastPressureKpa).toBeCloseTo(15 * 6.894757, 4);
  });
});
