/**
 * More rain never asks for more irrigation. What is true of it since each morning is decided by itself, of a kept planting, alone in its zone,
 * before rounding and skipping:
 *
 * **All of its ground is wetted.** On no morning does it ask for more, whatever was short or drained before, whatever is to wash salt away, however long a
 * number stands. Why, of two weathers of which one has brought as much rain to each day as the other or more:
 * 1. A day ends no wetter for having begun drier, or for less water (FAO-56 eq. 84 to 88 with the day's water first, Example 38, p. 172).
 * 2. A morning asks for the least equal minutes with which the days that it expects, each with the use of its stress, end at the goal. With less missing
 *    they are no more: what was enough is enough (1). So the wetter never asks for more.
 * 3. Nor is the wetter drier on any later day before the next number. Say it were so from some day on, in the days as expected; then from that day on
 *    it would stay so, for it is not watered more (2), with any number that is a little less than the drier one's too. Of those the drier one's days end
 *    beyond the goal, since it asks for the least; so the wetter's would end beyond it, with a number that ends at it. And while a number stands
 *    the days are as they were expected: once one is read, or forecast anew, the next morning asks anew.
 * 4. So it begins each morning no drier, the next number's too, and (2) holds again. Water that washes salt away passes straight through: none of it
 *    stays in soil that turns out drier.
 *
 * **Lines wet a part of its ground.** There are two depletions and one number, of the wetted part, that hangs on what the rest is to give. The drier one asks
 * that the wetted part bear what the rest has not readily; on a day on which neither has enough the rest goes beyond that all the same, and the drier one's
 * wetted part may end wetter: on fewer than two of a thousand mornings more rain asks for more, also where nothing was short and nothing drained.
 *
 * **Pots.** A day's equal runs may drain in the morning what it lacks in the evening. Until a pot has first drained, or was short in the drier weather,
 * it asks for no more; later on fewer than one of a hundred mornings it did.
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
import { rootZoneDay } from '../../src/engine/soil/root-zone-day.ts';
import { law } from './law.ts';
import { alone, drains, expectAtMost, isAbove, isShort, isWhole, twoWeathers } from './two-weathers.ts';
import { MINUTES_BY_DAY, plantingRows } from './weeks-of.ts';

/** Mornings that ask in the drier weather; those on which more rain asked for fewer minutes, and for more. */
const mornings = () => ({ all: 0, saved: 0, askedForMore: 0 });

/** Mornings of the law after a shortage or a drain. */
let lateInOrder = 0;

const seen = { whole: mornings(), part: mornings(), pot: mornings() };

function kindOf({ plantings }: ZoneSeason): keyof typeof seen {
  if (plantings.some(({ planting }) => planting.container !== undefined)) return 'pot';
  return plantings.every(({ planting }) => isWhole(planting)) ? 'whole' : 'part';
}

/** One zone in both weathers. Of pots there is an order until a first shortage in the drier one, or a drain. */
function expectNoMore(wetter: ZoneSeason, drier: ZoneSeason): void {
  const kind = kindOf(wetter);
  let isLate = false;
  for (let week = 0; week < wetter.weeks; week++) {
    isLate ||= isShort(drier, week) || drains(wetter, week) || drains(drier, week);
    const isOrdered = kind === 'whole' || (kind === 'pot' && !isLate);
    for (const day of MINUTES_BY_DAY) {
      const [minutes, other] = [zoneFigure(wetter, day, week), zoneFigure(drier, day, week)];
      note(kind, minutes, other);
      lateInOrder += Number(isOrdered && isLate && other > 0);
      if (isOrdered) expectAtMost(minutes, other, `${wetter.zone.id} week ${week} ${day}`);
    }
  }
}

function note(kind: keyof typeof seen, minutes: number, drierMinutes: number): void {
  const of = seen[kind];
  of.all += Number(drierMinutes > 0);
  of.saved += Number(minutes < drierMinutes);
  of.askedForMore += Number(isAbove(minutes, drierMinutes));
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

  it('also after a shortage or a drain, where all of its ground is wetted; and on many mornings for less', () => {
    expect(lateInOrder).toBeGreaterThan(2_000);
    expect(seen.whole.saved).toBeGreaterThan(200);
    expect(seen.whole.askedForMore / seen.whole.all).toBeLessThan(0.001);
  });

  it('on fewer than two in a thousand for more where lines wet a part of it, and than one in a hundred of pots', () => {
    expect(seen.part.all).toBeGreaterThan(2_000);
    expect(seen.part.askedForMore / seen.part.all).toBeLessThan(0.002);
    expect(seen.pot.all).toBeGreaterThan(1_500);
    expect(seen.pot.askedForMore / seen.pot.all).toBeLessThan(0.01);
  });

  // TAW 100, RAW 50, ETc 10, to be left 20 mm down: from 50 mm down it asks for 40, from 60 mm down for 50, and uses 10 of either.
  it('by hand, of a day that begins short and is watered: both end it 20 mm down', () => {
    const watered = { rawMm: 50, tawMm: 100, etcMm: 10, rainMm: 0 };
    expect(rootZoneDay({ ...watered, depletionMm: 50, irrigationMm: 40 }).depletionMm).toBeCloseTo(20, 9);
    expect(rootZoneDay({ ...watered, depletionMm: 60, irrigationMm: 50 }).depletionMm).toBeCloseTo(20, 9);
  });

  // TAW 4, RAW 1.6, ETc 3, 2 mm of rain: from 1.6 mm down -0.4 and all 3 are used; from 3.8 down 1.8, and (4 - 1.8) / 2.4 of 3, all 2.2 that are there.
  it('by hand, of a day that asks for more than the soil holds: it ends no wetter for having begun drier', () => {
    const thirsty = { rawMm: 1.6, tawMm: 4, etcMm: 3, rainMm: 2, irrigationMm: 0 };
    expect(rootZoneDay({ ...thirsty, depletionMm: 1.6 }).depletionMm).toBeCloseTo(2.6, 9);
    expect(rootZoneDay({ ...thirsty, depletionMm: 2 }).depletionMm).toBeCloseTo(3, 9);
    expect(rootZoneDay({ ...thirsty, depletionMm: 3.8 }).depletionMm).toBeCloseTo(4, 9);
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
