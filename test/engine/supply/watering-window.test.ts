import { describe, expect, it } from 'vitest';
import { wateringDay, type ZoneCycles } from '../../../src/engine/supply/watering-window.ts';

const zone = (id: string, minutesPerCycle: number, cycles = 1, soakMinutes = 0): ZoneCycles =>
  Object.freeze({ id, minutesPerCycle, cycles, soakMinutes });

describe('a watering day against its window', () => {
  it('zones one after another: 40 + 60 + 50 min fit into 2.5 h exactly', () => {
    const day = wateringDay({
      groups: [[zone('beds', 40)], [zone('shrubs', 60)], [zone('pots', 50)]],
      windowHours: 2.5,
      interleaves: true,
    });
    expect(day.minutesNeeded).toBe(150);
    expect(day.fits).toBe(true);
    expect(day.minutesOver).toBe(0);
  });

  it('the same in 2 h is half an hour over', () => {
    const day = wateringDay({
      groups: [[zone('beds', 40)], [zone('shrubs', 60)], [zone('pots', 50)]],
      windowHours: 2,
      interleaves: true,
    });
    expect(day.fits).toBe(false);
    expect(day.minutesOver).toBe(30);
    expect(day.windowMinutes).toBe(120);
  });

  it('a group takes as long as its longest zone', () => {
    const day = wateringDay({
      groups: [[zone('beds', 40), zone('pots', 50)], [zone('shrubs', 60)]],
      windowHours: 2,
      interleaves: true,
    });
    expect(day.minutesNeeded).toBe(110);
    expect(day.timeline).toEqual([
      { ids: ['beds', 'pots'], startMinute: 0, endMinute: 50 },
      { ids: ['shrubs'], startMinute: 50, endMinute: 110 },
    ]);
  });

  it('counts the soak pauses, and what another zone runs in them', () => {
    const clay = zone('clay', 10, 3, 30);
    const alone = wateringDay({ groups: [[clay]], windowHours: 1, interleaves: true });
    expect(alone.minutesNeeded).toBe(90);
    expect(alone.minutesWaiting).toBe(60);
    const groups = [[clay], [zone('sand', 25)], [zone('loam', 25)]];
    expect(wateringDay({ groups, windowHours: 2, interleaves: true })).toMatchObject({
      minutesNeeded: 90,
      minutesWaiting: 10,
    });
    expect(wateringDay({ groups, windowHours: 2, interleaves: false })).toMatchObject({
      minutesNeeded: 140,
      minutesWaiting: 60,
    });
  });

  it('zones of a group that need no further cycle stay shut in it and ask for no pause', () => {
    const day = wateringDay({
      groups: [[zone('clay', 10, 2, 30), zone('sand', 25, 1, 90)]],
      windowHours: 2,
      interleaves: true,
    });
    expect(day.timeline).toEqual([
      { ids: ['clay', 'sand'], startMinute: 0, endMinute: 25 },
      { ids: ['clay'], startMinute: 55, endMinute: 65 },
    ]);
  });

  it('zones that do not water today take no time', () => {
    const day = wateringDay({
      groups: [[zone('beds', 40, 0)], [zone('pots', 0, 2, 30)], []],
      windowHours: 0,
      interleaves: true,
    });
    expect(day).toMatchObject({ minutesNeeded: 0, minutesWaiting: 0, fits: true, timeline: [] });
  });

  it.each([
    [{ windowHours: 25 }, 'The watering window (hours a day) is 25; it must be at most 24.'],
    [{ windowHours: -1 }, 'The watering window (hours a day) is -1; it must be 0 or more.'],
    [{ groups: [[zone('beds', -5)]] }, 'The cycle of zone beds (min) is -5; it must be 0 or more.'],
    [{ groups: [[zone('beds', 5, Number.NaN)]] }, 'The number of cycles of zone beds is NaN; it must be 0 or more.'],
    [{ groups: [[zone('beds', 5, 2, -1)]] }, 'The soak pause of zone beds (min) is -1; it must be 0 or more.'],
  ])('%o is refused in words', (wrong, words) => {
    const day = Object.freeze({ groups: [[zone('beds', 40)]], windowHours: 2, interleaves: true });
    expect(() => wateringDay({ ...day, ...wrong })).toThrow(new RangeError(words));
  });
});
