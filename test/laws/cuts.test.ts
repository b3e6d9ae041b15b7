/** Water that is cut: nothing where nothing is taken, and never more than may be left. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Garden, GardenZone, SupplyCut } from '../../src/engine/garden.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { zoneFigure } from '../../src/engine/season/zone-week.ts';
import { between } from '../support/garden-numbers.ts';
import { arbitraryLimitedGarden } from '../support/limited-garden.ts';
import { law } from './law.ts';
import { allFigures, litresByWeek } from './weeks-of.ts';

const gardens = arbitraryLimitedGarden({ mostWeeks: 6, mostZones: 3 });

function withCuts(garden: Garden, cuts: readonly SupplyCut[]): Garden {
  return { ...garden, supply: { ...garden.supply, cuts } };
}

function wholeSeason({ span }: Garden) {
  return { from: span.firstDay, to: span.firstDay + 7 * span.weeks };
}

/** Whether a person gave the minutes of the week, or closed it. */
function isGiven({ choices }: GardenZone, week: number): boolean {
  const { minutes, minutesRun, runs, closed } = choices.get(week) ?? {};
  return closed === true || [minutes, minutesRun, runs].some((given) => given !== undefined);
}

/** One of the weeks in which something runs; any where nothing does. */
function aWeekThatRuns(litres: readonly number[], place: number): number {
  const weeks = litres.flatMap((ofWeek, week) => (ofWeek > 0 ? [week] : []));
  return weeks[place % weeks.length] ?? place % litres.length;
}

let less = 0;
let unmet = 0;

describe('a cut', () => {
  law(
    'of nothing, or to more than there is, or of other weeks, and one that a later takes back, leaves the season as it is',
    {
      on: gardens,
      runs: 60,
      holds: (garden) => {
        const { from, to } = wholeSeason(garden);
        const plain = allFigures(runSeason(withCuts(garden, [])));
        const none: readonly SupplyCut[] = [
          { from, to, share: 0 },
          { from, to, litresPerWeek: 1e9 },
          { from: from - 30, to: from - 1, share: 1 },
        ];
        for (const cut of none) expect(allFigures(runSeason(withCuts(garden, [cut])))).toEqual(plain);
        const overruled: readonly SupplyCut[] = [
          { from, to, share: 1 },
          { from, to, share: 0 },
        ];
        expect(allFigures(runSeason(withCuts(garden, overruled)))).toEqual(plain);
      },
    },
  );

  law('of all leaves nothing but what a person gave, and what is exempt', {
    on: gardens,
    runs: 60,
    holds: (garden) => {
      for (const zone of runSeason(withCuts(garden, [{ ...wholeSeason(garden), share: 1 }])).zones) {
        for (let week = 0; week < zone.weeks; week++) {
          if (zone.zone.cutExempt !== true && !isGiven(zone.zone, week))
            expect(zoneFigure(zone, 'litres', week)).toBe(0);
        }
      }
    },
  });

  law(
    'of a week in which nothing is read leaves no more than it allows, but for what may not be cut, and earlier weeks as they are',
    {
      on: fc.tuple(gardens, fc.nat(), between(0, 1)),
      runs: 160,
      holds: ([garden, place, share]) => {
        const unread = { ...garden, observed: { days: new Map(), weeks: new Map() } };
        const uncut = runSeason(withCuts(unread, []));
        const week = aWeekThatRuns(litresByWeek(uncut), place);
        const day = garden.span.firstDay + 7 * week;
        const cut = runSeason(withCuts(unread, [{ from: day, to: day, share }]));
        const [before, after] = [uncut, cut].map(litresByWeek) as [number[], number[]];
        expect(after.slice(0, week)).toEqual(before.slice(0, week));
        const untouched = uncut.zones.filter(({ zone }) => zone.cutExempt === true || isGiven(zone, week));
        const kept = untouched.reduce((sum, zone) => sum + zoneFigure(zone, 'litres', week), 0);
        const allowed = Math.max((1 - share) * (before[week] ?? 0), kept);
        expect(after[week]).toBeLessThanOrEqual(allowed * (1 + 1e-9));
        // What no zone could give up is what is left beyond what the cut allows.
        const untaken = cut.cuts?.untakenLitres[week] ?? Number.NaN;
        expect(Math.abs(untaken - Math.max(0, kept - (1 - share) * (before[week] ?? 0)))).toBeLessThanOrEqual(
          1e-9 * (1 + kept),
        );
        if (untaken > 0) unmet += 1;
        if ((after[week] ?? 0) < (before[week] ?? 0)) less += 1;
      },
    },
  );

  it('takes something from many gardens', () => {
    expect(less).toBeGreaterThan(20);
    expect(unmet).toBeGreaterThan(5);
  });
});
