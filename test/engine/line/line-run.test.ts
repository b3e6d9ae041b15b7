import { describe, expect, it } from 'vitest';
import { emitterFlowLph } from '../../../src/engine/line/emitter.ts';
import { lateral } from '../../../src/engine/line/lateral.ts';
import { emitterOf, lineRun } from '../../../src/engine/line/line-run.ts';
import { NOMINAL_PRESSURE_KPA } from '../../../src/engine/line/usual-pressures.data.ts';
import { laidLine, plantingWith, pointLine } from '../../support/laid-line.ts';

const GROUND = plantingWith([]);

describe('one run of a line', () => {
  it('is one of the equal runs: its emitters, spacing and tube', () => {
    expect(lineRun(laidLine({ runs: 4, outlets: 25 }), GROUND)).toMatchObject({
      lateral: { topology: 'dead-end', outlets: 25, spacingM: 0.3, leadM: 0.3, insideDiameterMm: 14.2 },
      runs: 4,
      spacing: 'laid',
    });
    expect(lineRun(laidLine({ runs: 4, outlets: 25 }), GROUND)?.lengthM).toBeCloseTo(7.5, 12);
  });

  it('in a loop has as much tube as was laid, all the way round', () => {
    const line = laidLine({ outlets: 10, lengthM: 3.2, topology: 'loop' });
    const run = lineRun(line, GROUND)?.lateral;
    expect(run && lateral({ ...run, inletPressureKpa: 150 }).lengthM).toBeCloseTo(3.2, 12);
  });

  it('of emitters round counted plants has one outlet a plant, a plant’s square of ground apart', () => {
    const run = lineRun(pointLine(12), { areaM2: 24, plants: 6 });
    expect(run).toMatchObject({ lateral: { outlets: 6, emittersPerOutlet: 2, spacingM: 2 }, spacing: 'estimated' });
  });

  it('of emitters in a bed has them one by one', () => {
    const run = lineRun(pointLine(12), { areaM2: 27, plants: undefined });
    expect(run).toMatchObject({ lateral: { outlets: 12, emittersPerOutlet: 1, spacingM: 1.5 }, spacing: 'estimated' });
  });

  it.each([
    ['solid line', pointLine(0, { kind: 'solid' })],
    ['dripline shorter than its spacing', laidLine({ outlets: 0, lengthM: 0.2 })],
  ])('%s has none', (_name, line) => {
    expect(lineRun(line, GROUND)).toBeUndefined();
  });
});

describe('the emitter of a line', () => {
  it('that is plain gives its flow at the usual regulated pressure', () => {
    const emitter = emitterOf(laidLine({ compensating: false, emitterFlowLph: 4 }));
    expect(emitterFlowLph(emitter, NOMINAL_PRESSURE_KPA)).toBeCloseTo(4, 12);
    expect(emitterFlowLph(emitter, NOMINAL_PRESSURE_KPA / 4)).toBeCloseTo(2, 12);
  });

  it('that compensates from no pressure at all still needs some', () => {
    const emitter = emitterOf(laidLine({ leastPressureKpa: 0 }));
    expect(emitterFlowLph(emitter, 0)).toBe(0);
    expect(emitterFlowLph(emitter, 1)).toBe(2.3);
  });
});
