/**
 * More rain asks for more irrigation only where it left the soil drier: on a morning on which a kept planting alone in its zone asks anew and
 * its soil is no drier than in the drier weather, it asks for no more, before rounding and skipping; whatever was short or drained before. Left
 * out are plantings whose lines wet a part of the ground: there are two depletions and one number.
 *
 * That more rain may leave the soil drier lies in FAO-56. Eq. 84 takes Ks from the depletion at the start of the day (Example 37), so that a
 * planting that begins a day short uses less of it, though it is watered that morning:
 *   TAW 100, RAW 50, ETc 10, to be left 20 mm down. 50 mm down it asks for 40 and uses 10: 20 mm down. 60 mm down it asks for 50 and uses
 *   8: 18 mm down, and on the next morning the one with more rain asks for 2 mm more.
 * And without any watering, where a day's ETc is beyond (1 - p) TAW, eq. 84 and 85 turn the order:
 *   TAW 4, RAW 1.6, ETc 3, 2 mm of rain. From 1.6 mm down it uses 3 and ends 2.6 mm down, from 2 mm down 2.5 and ends 2.5 mm down.
 */
import { describe, expect, it } from 'vitest';
import { runSeason } from '../../src/engine/season/run-season.ts';
import type { Season, ZoneSeason } from '../../src/engine/season/season.ts';
import { zoneMornings } from '../../src/engine/season/zone-season.ts';
import { rootZoneDay } from '../../src/engine/soil/root-zone-day.ts';
import { law } from './law.ts';
import { alone, drains, expectAtMost, isShort, isWhole, twoWeathers } from './two-weathers.ts';

/** Mornings on which both ask anew and the soil is no drier with more rain, and of these such after a shortage or a drain. */
const bySoil = { ordered: 0, late: 0 };

const DEPTH_ROUNDING_MM = 1e-9;

function morningsOf({ garden, weather }: Season, zone: ZoneSeason, week: number) {
  return zoneMornings({ zone: zone.zone, site: garden.site, weather }, zone, week);
}

/** One zone in both weathers, on every morning of the season. */
function expectNoMoreBySoil(
  [wet, wetter]: readonly [Season, ZoneSeason],
  [dry, drier]: readonly [Season, ZoneSeason],
): void {
  if (!wetter.plantings.every(({ planting }) => isWhole(planting))) return;
  let isLate = false;
  for (let week = 0; week < wetter.weeks; week++) {
    const others = morningsOf(dry, drier, week);
    morningsOf(wet, wetter, week).forEach(({ day, plantings: [one] }, place) => {
      const other = others[place]?.plantings[0];
      if (one === undefined || other === undefined || !one.isPresent || !one.isAsked || !other.isAsked) return;
      if (one.depletionMm > other.depletionMm + DEPTH_ROUNDING_MM) return;
      bySoil.ordered += 1;
      bySoil.late += Number(isLate);
      expectAtMost(one.minutesAsked, other.minutesAsked, `${wetter.zone.id} day ${day}`);
    });
    isLate ||= isShort(drier, week) || drains(wetter, week) || drains(drier, week);
  }
}

describe('more rain asks for more irrigation only where it left the soil drier', () => {
  law('of a kept planting alone in its zone that asks anew: by its soil, on any morning of the season', {
    on: twoWeathers({}).map(alone('keep')),
    runs: 150,
    holds: ({ less, more }) => {
      const [dry, wet] = [runSeason(less), runSeason(more)];
      for (const [place, zone] of wet.zones.entries()) {
        expectNoMoreBySoil([wet, zone], [dry, dry.zones[place] as ZoneSeason]);
      }
    },
  });

  it('so also after a shortage or a drain', () => {
    expect(bySoil.ordered).toBeGreaterThan(500);
    expect(bySoil.late).toBeGreaterThan(150);
  });

  it('but a day of FAO-56 may leave the soil drier that had more rain', () => {
    const watered = { rawMm: 50, tawMm: 100, etcMm: 10, rainMm: 0 };
    expect(rootZoneDay({ ...watered, depletionMm: 50, irrigationMm: 40 }).depletionMm).toBeCloseTo(20, 9);
    expect(rootZoneDay({ ...watered, depletionMm: 60, irrigationMm: 50 }).depletionMm).toBeCloseTo(18, 9);
    const thirsty = { rawMm: 1.6, tawMm: 4, etcMm: 3, rainMm: 2, irrigationMm: 0 };
    expect(rootZoneDay({ ...thirsty, depletionMm: 1.6 }).depletionMm).toBeCloseTo(2.6, 9);
    expect(rootZoneDay({ ...thirsty, depletionMm: 2 }).depletionMm).toBeCloseTo(2.5, 9);
  });
});
