/**
 * More rain asks for more irrigation only where it left the soil drier: on a morning on which a kept planting alone in its zone asks anew and
 * its soil is no drier than in the drier weather, it asks for no more, before rounding and skipping; whatever was short or drained before, whatever is to
 * wash salt away. Left out are plantings whose lines wet a part of the ground: there are two depletions and one number. Where more rain may leave the soil
 * drier all the same says `more-rain.test.ts`.
 */
import { describe, expect, it } from 'vitest';
import { runSeason } from '../../src/engine/season/run-season.ts';
import type { Season, ZoneSeason } from '../../src/engine/season/season.ts';
import { zoneMornings } from '../../src/engine/season/zone-season.ts';
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
    runs: 75,
    holds: ({ less, more }) => {
      const [dry, wet] = [runSeason(less), runSeason(more)];
      for (const [place, zone] of wet.zones.entries()) {
        expectNoMoreBySoil([wet, zone], [dry, dry.zones[place] as ZoneSeason]);
      }
    },
  });

  it('so also after a shortage or a drain', () => {
    expect(bySoil.ordered).toBeGreaterThan(200);
    expect(bySoil.late).toBeGreaterThan(100);
  });
});
