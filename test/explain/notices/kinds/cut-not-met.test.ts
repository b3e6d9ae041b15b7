import { describe, expect, it } from 'vitest';
import type { GardenZone, SupplyCut } from '../../../../src/engine/garden.ts';
import { runSeason } from '../../../../src/engine/season/run-season.ts';
import { zoneFigure } from '../../../../src/engine/season/zone-week.ts';
import { noticesOf } from '../../../../src/explain/notices/notices-of.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone } from '../../../support/plain-garden.ts';

const zoneOf = (id: string, change: Partial<GardenZone> = {}) =>
  plainZone({ id, plantings: [plainPlanting({ id: `${id}-bed` })], ...change });

/** Two zones alike but for what is said of them, cut in the third week. */
function seasonWith(cut: { readonly share: number } | { readonly litresPerWeek: number }, other: Partial<GardenZone>) {
  const cuts: SupplyCut[] = [{ from: FIRST_DAY + 14, to: FIRST_DAY + 20, ...cut }];
  const supply = { sources: [], windowWeekdays: 127, windowHoursPerDay: 24, cuts };
  const season = runSeason(plainGarden([zoneOf('cut'), zoneOf('other', other)], { supply }));
  const litres = season.zones.map((zone) => [zoneFigure(zone, 'litres', 2)]);
  return { season, litres, notice: noticesOf(season).find(({ kind }) => kind === 'cut-not-met') };
}

describe('a cut that zones cannot give up', () => {
  it('of seven tenths of two alike zones of which one is exempt leaves two tenths of both', () => {
    const { litres, notice } = seasonWith({ share: 0.7 }, { cutExempt: true });
    const [cut, [kept = 0] = []] = litres;
    expect(cut).toEqual([0]);
    // Asked for are 0.7 of twice what the other keeps; this one gives up all that it has: 1.4 - 1 = 0.4.
    expect(kept).toBeGreaterThan(200);
    expect(notice).toMatchObject({ severity: 'warning', remedy: 'cut-kept', weeks: [2] });
    expect(notice?.figures).toEqual({
      askedLitres: expect.closeTo(1.4 * kept, 6),
      untakenLitres: expect.closeTo(0.4 * kept, 6),
      worstWeekLitres: expect.closeTo(0.4 * kept, 6),
    });
  });

  it('to an allowance that hand-set minutes pass leaves what they pass it by', () => {
    // 300 minutes at 60 L/h.
    const { litres, notice } = seasonWith({ litresPerWeek: 250 }, { choices: new Map([[2, { minutes: 300 }]]) });
    expect(litres[1]?.[0]).toBeCloseTo(300, 6);
    expect(notice).toMatchObject({ weeks: [2], figures: { untakenLitres: expect.closeTo(50, 6) } });
  });

  it('is not told where it can be taken, or nothing is cut', () => {
    expect(seasonWith({ share: 0.4 }, { cutExempt: true }).notice).toBeUndefined();
    expect(seasonWith({ share: 0 }, { cutExempt: true }).notice).toBeUndefined();
    expect(seasonWith({ share: 1 }, {}).notice).toBeUndefined();
  });
});
