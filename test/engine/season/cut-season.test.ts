import { describe, expect, it } from 'vitest';
import type { Garden, SupplyCut } from '../../../src/engine/garden.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import type { Season } from '../../../src/engine/season/season.ts';
import { weekCuts } from '../../../src/engine/season/week-cuts.ts';
import { zoneFigure } from '../../../src/engine/season/zone-week.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone } from '../../support/plain-garden.ts';

// Each zone asks for 17.5 mm of 4.8 mm/h (plain-garden.ts), 109.4 minutes twice a week, which are 109: at 60 L/h 218 L a week.
const zones = ['one', 'two', 'three'].map((id) => plainZone({ id, plantings: [plainPlanting({ id: `bed-${id}` })] }));

function cutBy(cut: Omit<SupplyCut, 'from' | 'to'>, change: (index: number) => object = () => ({})): Garden {
  const cuts = [{ from: FIRST_DAY + 28, to: FIRST_DAY + 28, ...cut } as SupplyCut];
  const own = zones.map((zone, index) => ({ ...zone, ...change(index) }));
  return plainGarden(own, { supply: { sources: [], windowWeekdays: 127, windowHoursPerDay: 24, cuts } });
}

const figures = (season: Season, field: Parameters<typeof zoneFigure>[1], week = 4) =>
  season.zones.map((zone) => zoneFigure(zone, field, week));

describe('weeks of a cut', () => {
  it('are those that begin on its days; of two cuts the later in the list counts', () => {
    const early = { from: FIRST_DAY + 7, to: FIRST_DAY + 20, share: 0.1 };
    const late = { from: FIRST_DAY + 14, to: FIRST_DAY + 14, litresPerWeek: 5 };
    const supply = { ...plainGarden().supply, cuts: [early, late] };
    expect([...weekCuts({ span: { firstDay: FIRST_DAY, weeks: 10 }, supply })]).toEqual([
      [1, early],
      [2, late],
    ]);
  });
});

describe('what is cut', () => {
  const whole = runSeason(plainGarden(zones));

  it('comes off the last zone first, each down to nothing before the next', () => {
    // Half of 654 L are 327: all 218 L of the third, and 109 of the second: 54.5 minutes are left, of which the timer runs 54.
    const season = runSeason(cutBy({ share: 0.5 }));
    expect(figures(whole, 'litres')).toEqual([218, 218, 218].map((litres) => expect.closeTo(litres, 6)));
    expect(figures(season, 'minutes')).toEqual([218, 108, 0]);
    expect(figures(season, 'cutLitres')).toEqual([0, expect.closeTo(110, 6), expect.closeTo(218, 6)]);
    expect(figures(season, 'cutShare')).toEqual([0, expect.closeTo(0.5, 9), 1]);
  });

  it('leaves an allowance of the week, in whole steps of the timer', () => {
    // 400 L are left: 254 off, of which the second gives 36: 109 minutes less 18 are 91.
    expect(figures(runSeason(cutBy({ litresPerWeek: 400 })), 'minutes')).toEqual([218, 182, 0]);
    expect(figures(runSeason(cutBy({ litresPerWeek: 1000 })), 'minutes')).toEqual([218, 218, 218]);
  });

  it('keeps to the order of the zones, and leaves exempt ones alone, whatever cannot be taken then', () => {
    const order = cutBy({ share: 0.5 }, (index) => ({ cutOrder: [3, 2, 1][index] }));
    expect(figures(runSeason(order), 'minutes')).toEqual([0, 108, 218]);
    const exempt = cutBy({ share: 0.5 }, (index) => ({ cutExempt: index > 0 }));
    expect(figures(runSeason(exempt), 'minutes')).toEqual([0, 218, 218]);
  });

  it('never comes off minutes that were set, run or closed, which count in the sum', () => {
    const set = cutBy({ share: 0.5 }, (index) => (index === 2 ? { choices: new Map([[4, { minutes: 220 }]]) } : {}));
    expect(figures(runSeason(set), 'minutes')).toEqual([108, 0, 220]);
  });

  it('of all leaves nothing, not even what is asked for later in the week than was expected', () => {
    // Rain is forecast for the week, and none comes.
    const forecast = {
      issued: FIRST_DAY + 28,
      days: new Map([28, 29, 30].map((day) => [FIRST_DAY + day, { rainMm: 30 }])),
    };
    const dry = new Map([28, 29, 30, 31, 32, 33, 34].map((day) => [FIRST_DAY + day, { rainMm: 0 }]));
    const observed = { days: dry, weeks: new Map(), forecasts: [forecast] };
    const run = (garden: Garden) => figures(runSeason({ ...garden, observed }), 'minutes');
    expect(Math.max(...run(cutBy({ share: 0 })))).toBeGreaterThan(0);
    expect(run(cutBy({ share: 1 }))).toEqual([0, 0, 0]);
    expect(run(cutBy({ litresPerWeek: 0 }))).toEqual([0, 0, 0]);
  });

  it('is nothing where the share is 0, to the last digit', () => {
    const none = runSeason(cutBy({ share: 0 }));
    expect(none.zones.map((zone) => zone.figures)).toEqual(whole.zones.map((zone) => zone.figures));
  });

  it('dries the plants, and the next week makes good', () => {
    const season = runSeason(cutBy({ share: 0.5 }));
    expect(figures(season, 'minutes', 5)[2]).toBeGreaterThan(220);
    expect(figures(season, 'minutes', 3)).toEqual(figures(whole, 'minutes', 3));
  });

  it('is the same when the season is run again after another', () => {
    const cut = cutBy({ share: 0.5 });
    const after = runSeason(cut, whole);
    expect(after.zones.map((zone) => zone.figures)).toEqual(runSeason(cut).zones.map((zone) => zone.figures));
    const back = runSeason(plainGarden(zones), after);
    expect(back.zones.map((zone) => zone.figures)).toEqual(whole.zones.map((zone) => zone.figures));
  });
});
