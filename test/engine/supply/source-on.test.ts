import { describe, expect, it } from 'vitest';
import { NOMINAL_PRESSURE_KPA } from '../../../src/engine/line/usual-pressures.data.ts';
import { inletPressureOn, sourceOn } from '../../../src/engine/supply/source-on.ts';

const supply = {
  sources: [
    { from: 10, name: 'Hose', pressureKpa: 200 },
    { from: 20, name: 'Main', flowLpm: 30 },
  ],
};

describe('the source of a day', () => {
  it.each([
    [9, undefined],
    [10, 'Hose'],
    [19, 'Hose'],
    [20, 'Main'],
    [99, 'Main'],
  ])('%s is the last that has begun: %s', (day, name) => {
    expect(sourceOn(supply, day)?.name).toBe(name);
  });

  it('gives its pressure, or where it tells none the usual regulated one', () => {
    expect(inletPressureOn(supply, 10)).toEqual({ kpa: 200, isKnown: true });
    expect(inletPressureOn(supply, 20)).toEqual({ kpa: NOMINAL_PRESSURE_KPA, isKnown: false });
    expect(inletPressureOn(supply, 9)).toEqual({ kpa: NOMINAL_PRESSURE_KPA, isKnown: false });
  });

  it('that gives no pressure is known to give none', () => {
    expect(inletPressureOn({ sources: [{ from: 0, name: 'Barrel', pressureKpa: 0 }] }, 1)).toEqual({
      kpa: 0,
      isKnown: true,
    });
  });
});
