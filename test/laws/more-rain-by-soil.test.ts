/**
 * More rain leaves the soil no drier, and asks for no more: on every morning a kept planting alone in its zone, all of whose ground is wetted, has no
 * more missing than in the drier weather, whatever was short or drained before, whatever is to wash salt away. Where it asks anew with no more
 * missing, it asks for no more, before rounding and skipping; so does a pot, of which more rain may leave more missing. Left out are plantings whose lines wet
 * a part of the ground: there are two depletions and one number. Why it holds, and what is left out of it, says `more-rain.test.ts`.
 */
import { describe, expect, it } from 'vitest';
import { runSeason } from '../../src/engine/season/run-season.ts';
import type { Season, ZoneSeason } from '../../src/engine/season/season.ts';
import { zoneMornings } from '../../src/engine/season/zone-season.ts';
import { law } from './law.ts';
import { alone, drains, expectAtMost, isShort, isWhole, twoWeathers } from './two-weathers.ts';

/** Mornings on which both ask anew and the soil is no drier with more rain, and of these such after a shortage or a drain. */
const bySoil = { ordered: 0, late: 0, wetter: 0 };

const DEPTH_ROUNDING_MM = 1e-9;

/** What the timer's step may leave on all mornings before. */
const STEP_ROUNDING_MM = 1e-5;

function morningsOf({ garden, weather }: Season, zone: ZoneSeason, week: number) {
  return zoneMornings({ zone: zone.zone, site: garden.site, weather }, zone, week);
}

/** One zone in both weathers, on every morning of the season. */
function expectNoMoreBySoil(
  [wet, wetter]: readonly [Season, ZoneSeason],
  [dry, drier]: readonly [Season, ZoneSeason],
): void {
  if (!wetter.plantings.every(({ planting }) => isWhole(planting))) return;
  const isGround = wetter.plantings.every(({ planting }) => planting.container === undefined);
  let isLate = false;
  for (let week = 0; week < wetter.weeks; week++) {
    const others = morningsOf(dry, drier, week);
    morningsOf(wet, wetter, week).forEach(({ day, plantings: [one] }, place) => {
      const other = others[place]?.plantings[0];
      if (one === undefined || other === undefined || !one.isPresent) return;
      if (isGround) {
        bySoil.wetter += Number(one.depletionMm < other.depletionMm - STEP_ROUNDING_MM);
        expectAtMost(one.depletionMm, other.depletionMm + STEP_ROUNDING_MM, `${wetter.zone.id} soil on day ${day}`);
      }
      if (!one.isAsked || !other.isAsked) return;
      if (one.depletionMm > other.depletionMm + DEPTH_ROUNDING_MM) return;
      bySoil.ordered += 1;
      bySoil.late += Number(isLate);
      expectAtMost(one.minutesAsked, other.minutesAsked, `${wetter.zone.id} day ${day}`);
    });
    isLate ||= isShort(drier, week) || drains(wetter, week) || drains(drier, week);
  }
}

describe('more rain leaves the soil no drier', () => {
  law(
    'of a kept planting alone in its zone, on any morning of the season; and with no more missing it asks for no more',
    {
      on: twoWeathers({}).map(alone('keep')),
      runs: 200,
      holds: ({ less, more }) => {
        const [dry, wet] = [runSeason(less), runSeason(more)];
        for (const [place, zone] of wet.zones.entries()) {
          expectNoMoreBySoil([wet, zone], [dry, dry.zones[place] as ZoneSeason]);
        }
      },
    },
  );

  it('so also after a shortage or a drain', () => {
    expect(bySoil.ordered).toBeGreaterThan(200);
    expect(bySoil.late).toBeGreaterThan(100);
    expect(bySoil.wetter).toBeGreaterThan(100);
  });
});
