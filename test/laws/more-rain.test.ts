/**
 * More rain never asks for more irrigation. What is true of it since each morning is decided by itself, of a kept planting, alone in its zone,
 * before rounding and skipping:
 *
 * On no morning does it ask for more, until it has first been short of water in the drier weather. Its minutes rise with its
 * depletion, and by no more than the depletion does; so with more rain it is never drier on any later morning, though it was watered less.
 *
 * The bound lies in the plant (FAO-56 eq. 84, from the depletion at the start of the day): one that is short uses less than its full demand, so
 * that it may end the day wetter than one that was not; `more-rain-by-soil.test.ts` works such days, and says what holds after them.
 *
 * Nor is there an order any more once water has drained: both are full then, and the number that one morning gave to the next waters less where
 * it rained more: one number a week is a rule of this kit, as timers are set. Nor where lines wet a part of the ground: there are two depletions
 * and one number, and a store that begins a day beyond what is readily there gives none of that day's rain (eq. 84, from the start of the day), one
 * that begins it just within gives all of it, so that a little more rain can turn from which of the two the day's use comes. There more is asked
 * for on few mornings.
 *
 * A refill, alone in its zone: it is not due sooner. After it has been filled there is no order any more: whoever was filled earlier is due
 * earlier next time.
 *
 * Within the first week a kept planting all of whose ground is wetted needs no more, whatever its zone runs.
 *
 * What was a law while a week had one number, and is none any more: of zones with several plantings, of litres, and of sums over the
 * weeks so far. A step of the timer, a skipped morning and the neighbours' needs move water from one morning to another.
 */
import { describe, expect, it } from 'vitest';
import { plantingFigure } from '../../src/engine/season/planting-week.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import type { Season, ZoneSeason } from '../../src/engine/season/season.ts';
import { zoneFigure } from '../../src/engine/season/zone-week.ts';
import { law } from './law.ts';
import { alone, drains, expectAtMost, isAbove, isShort, isWhole, twoWeathers } from './two-weathers.ts';
import { MINUTES_BY_DAY, plantingRows } from './weeks-of.ts';

/** Mornings: that more rain asked for fewer minutes, on which there is an order, of all, and on which it asked for more. */
const mornings = { saved: 0, ordered: 0, all: 0, askedForMore: 0 };

/** One zone in both weathers, until its planting is first short in the drier one. */
function expectNoMore(wetter: ZoneSeason, drier: ZoneSeason): void {
  let isOrdered = wetter.plantings.every(({ planting }) => isWhole(planting));
  for (let week = 0; week < wetter.weeks && !isShort(drier, week); week++) {
    isOrdered &&= !drains(wetter, week) && !drains(drier, week);
    for (const day of MINUTES_BY_DAY) {
      const [minutes, other] = [zoneFigure(wetter, day, week), zoneFigure(drier, day, week)];
      noteMorning(minutes, other, isOrdered);
      if (isOrdered) expectAtMost(minutes, other, `${wetter.zone.id} week ${week} ${day}`);
    }
  }
}

function noteMorning(minutes: number, drierMinutes: number, isOrdered: boolean): void {
  mornings.saved += Number(minutes < drierMinutes);
  mornings.all += Number(drierMinutes > 0);
  mornings.ordered += Number(isOrdered && drierMinutes > 0);
  mornings.askedForMore += Number(isAbove(minutes, drierMinutes));
}

describe('more rain never asks for more irrigation', () => {
  law('of a kept planting alone in its zone, on any morning', {
    on: twoWeathers({}).map(alone('keep')),
    runs: 1_000,
    holds: ({ less, more }) => {
      const dry = runSeason(less);
      for (const [place, zone] of runSeason(more).zones.entries()) expectNoMore(zone, dry.zones[place] as ZoneSeason);
    },
  });

  it('and on many mornings for less; on fewer than one in a thousand for more, where there is no order', () => {
    expect(mornings.saved).toBeGreaterThan(500);
    expect(mornings.ordered).toBeGreaterThan(200);
    expect(mornings.all).toBeGreaterThan(5000);
    expect(mornings.askedForMore / mornings.all).toBeLessThan(0.001);
  });

  law('of a refill alone in its zone: it is not due sooner', {
    on: twoWeathers({}).map(alone('refill')),
    runs: 1_000,
    holds: ({ less, more }) => {
      const dry = runSeason(less);
      const wet = runSeason(more);
      for (const place of wet.zones.keys()) {
        expect(firstDue(wet, place), `${wet.zones[place]?.zone.id}`).toBeGreaterThanOrEqual(firstDue(dry, place));
      }
    },
  });

  law('of a kept planting in its first week: it needs no more', {
    on: twoWeathers({ mostWeeks: 1 }),
    runs: 1_000,
    holds: ({ less, more }) => {
      const dry = plantingRows(runSeason(less));
      plantingRows(runSeason(more)).forEach(({ planting, week }, place) => {
        if (planting.watering === 'refill' || !isWhole(planting)) return;
        expectAtMost(week.neededMm, dry[place]?.week.neededMm, `${planting.id} needed`);
      });
    },
  });
});

/** The first watering morning on which the zone's one planting is due; a day after the season where it never is. */
function firstDue({ zones, garden }: Season, place: number): number {
  const planting = zones[place]?.plantings[0];
  for (let week = 0; week < garden.span.weeks; week++) {
    const mask = planting === undefined ? 0 : plantingFigure(planting, 'dueMask', week);
    if (mask !== 0) return 7 * week + 31 - Math.clz32(mask & -mask);
  }
  return 7 * garden.span.weeks;
}
