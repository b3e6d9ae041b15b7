/**
 * The season, whole and after one edit: ours against the weekly relations as formulas in HyperFormula (the peer) and
 * against the bare loop (the limit). The peer has no states, cycles or totals to compute, weeks for days, and no kept rain; the
 * bare loop is given the made years. What these cost is measured by itself. The peer has one store a planting, so that it is compared in
 * one; in two stores, with roots that grow, the bare loop alone is.
 */
import type { Garden } from '../../src/engine/garden.ts';
import { madeYears } from '../../src/engine/rain/made-years.ts';
import { keptRainShares, type RainKeeper } from '../../src/engine/season/kept-rain.ts';
import { yearsOfRain } from '../../src/engine/season/planting-rain.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import type { Season, ZoneSeason } from '../../src/engine/season/season.ts';
import { zoneFigure } from '../../src/engine/season/zone-week.ts';
import { computeSeason } from '../../src/plan/compute-season.ts';
import { gardenOf } from '../../src/plan/garden-of.ts';
import type { Plan } from '../../src/plan/schema/plan-schema.ts';
import { Bare } from './bare/bare.ts';
import { type Contest, hold } from './contest.ts';
import { atPressure, benchGarden, inOneStore, WEEKS, withWeekMinutes, withWeekRain, zoneIdAt } from './gardens.ts';
import { keepersIn, keptRainAlone } from './kept-rain.ts';
import { type Outcome, outcome, type Suite } from './outcome.ts';
import { requireSameSeason, requireSameWeeks } from './same-season.ts';
import { Sheet } from './sheet/sheet.ts';

const SIZES = [10, 50, 200];
/** The size at which figures are asked for. */
const ASKED_AT = 200;

export const seasonSuite: Suite = { name: 'season', outcomes };

function* outcomes(): Generator<Outcome> {
  for (const zones of SIZES) {
    const plan = inOneStore(benchGarden(zones));
    const garden = gardenOf(plan);
    const rivals = { bare: new Bare(garden), sheet: () => new Sheet(garden) };
    yield hold(wholeSeason(plan, rivals));
    requireSame(plan, rivals);
    yield hold(rainEdit(plan, rivals));
    yield hold(minutesEdit(plan, rivals));
    if (zones === ASKED_AT) {
      yield* madeYearsAlone(garden, rivals);
      yield* withoutPeer(atPressure(plan), 'at pressure');
      yield* withoutPeer(benchGarden(zones), 'in two stores');
      yield* keptRainAlone();
    }
  }
}

/** What lines give at their pressure is given to the bare loop; ours solves it, once for each plan. */
function* withoutPeer(plan: Plan, how: string): Generator<Outcome> {
  const garden = gardenOf(plan);
  const rivals = { bare: new Bare(garden), sheet: () => new Sheet(garden) };
  const named = (contest: Contest): Contest => ({ ...contest, name: `${contest.name} ${how}`, peer: undefined });
  yield hold(named(wholeSeason(plan, rivals)));
  requireSameWeeks(computeSeason(plan), rivals.bare);
  yield hold(named(rainEdit(plan, rivals)));
}

interface Rivals {
  readonly bare: Bare;
  /** Not built yet. */
  readonly sheet: () => Sheet;
}

/** A generator's frame would hold the sheet while others are timed. */
function requireSame(plan: Plan, { bare, sheet }: Rivals): void {
  requireSameSeason(computeSeason(plan), { bare, sheet: built(sheet()) });
}

function built(sheet: Sheet): Sheet {
  sheet.build();
  return sheet;
}

const times = (zones: number, work: number, most: number) => Math.max(1, Math.min(most, Math.round(work / zones)));

/** From a plan never seen before to every figure of every cell. */
function wholeSeason(plan: Plan, { bare, sheet }: Rivals): Contest {
  const zones = plan.zones.length;
  let unseen = plan;
  return {
    name: `whole season, ${zones} zones`,
    ours: {
      prepare: () => {
        unseen = structuredClone(plan);
      },
      run: () => readCells(computeSeason(unseen).zones),
      warmUps: times(zones, 4000, 100),
      rounds: times(zones, 8000, 60),
    },
    peer: () => {
      const unbuilt = sheet();
      return { run: () => unbuilt.build(), warmUps: zones < ASKED_AT ? 1 : 0, rounds: times(zones, 600, 5) };
    },
    limit: { run: () => bare.run(), warmUps: times(zones, 4000, 100), rounds: times(zones, 8000, 60) },
    asked: zones === ASKED_AT ? { oursOverLimit: 5 } : undefined,
  };
}

/** To make the years, and what each planting that asks for itself does with them. */
function* madeYearsAlone(garden: Garden, { bare }: Rivals): Generator<Outcome> {
  const season = runSeason(garden);
  const { firstDay, days } = season.weather;
  const { rainMm: monthlyRainMm, rainDays } = garden.site.climate;
  const make = () => madeYears({ firstDay, days, monthlyRainMm, rainDays });
  yield hold({ name: `made years, ${WEEKS} weeks of ${make().years}`, ours: { run: make, warmUps: 20, rounds: 40 } });
  const keepers = keepersOf(season, bare);
  const years = yearsOfRain(garden.site, season.weather);
  const all = hold({
    name: 'all',
    ours: { run: () => keepers.map((keeper) => keptRainShares(keeper, years)), warmUps: 5, rounds: 25 },
    limit: { run: () => bare.keepRain(), warmUps: 5, rounds: 25 },
  });
  const each = (ms: number | null) => (ms === null ? null : ms / keepers.length);
  const times = { ours: all.ours_ms / keepers.length, peer: null, limit: each(all.limit_ms) };
  yield outcome('kept rain of a planting that asks for itself', times, { oursMs: 1 });
}

/** Those of the bare loop, in its order. */
function keepersOf(season: Season, { garden }: Bare): readonly RainKeeper[] {
  const all = keepersIn(season);
  return [...garden.keepers.planting].map((planting) => all[planting] as RainKeeper);
}

/** Another figure in one rain gauge reading, in one week after another: every zone moves. */
function rainEdit(plan: Plan, { bare, sheet }: Rivals): Contest {
  const zones = plan.zones.length;
  let season = computeSeason(plan);
  let now = plan;
  const next = edits();
  const nextOfSheet = edits();
  const nextOfBare = edits();
  return {
    name: `one week's rain, ${zones} zones`,
    ours: {
      run: () => {
        const { week, odd } = next();
        now = withWeekRain(now, week, odd ? 5 : 12);
        season = computeSeason(now, season);
        return readCells(season.zones);
      },
      warmUps: times(zones, 10_000, 200),
      rounds: times(zones, 21_200, 106),
    },
    peer: () => {
      const standing = built(sheet());
      return {
        run: () => {
          const { week, odd } = nextOfSheet();
          standing.setRain(week, odd ? 5 : 12);
        },
        warmUps: times(zones, 1000, 20),
        rounds: times(zones, 6000, 53),
      };
    },
    limit: {
      run: () => {
        const { week, odd } = nextOfBare();
        bare.setRain(week, odd ? 5 : 12);
      },
      warmUps: times(zones, 10_000, 200),
      rounds: times(zones, 21_200, 106),
    },
    asked: zones === ASKED_AT ? { oursOverLimit: 1.5, oursMs: 10 } : undefined,
  };
}

/** Another figure for one zone's minutes, in one week after another. */
function minutesEdit(plan: Plan, { bare, sheet }: Rivals): Contest {
  const zones = plan.zones.length;
  const place = 4;
  let season = computeSeason(plan);
  let now = plan;
  const next = edits();
  const nextOfSheet = edits();
  const nextOfBare = edits();
  return {
    name: `one zone's minutes, ${zones} zones`,
    ours: {
      run: () => {
        const { week, odd } = next();
        now = withWeekMinutes(now, zoneIdAt(place), week, odd ? 30 : 77);
        season = computeSeason(now, season);
        return readCells(season.zones.slice(place, place + 1));
      },
      warmUps: 300,
      rounds: 212,
    },
    peer: () => {
      const standing = built(sheet());
      return {
        run: () => {
          const { week, odd } = nextOfSheet();
          standing.setMinutes(place, week, odd ? 30 : 77);
        },
        warmUps: 60,
        rounds: 212,
      };
    },
    limit: {
      run: () => {
        const { week, odd } = nextOfBare();
        bare.setMinutes(place, week, odd ? 30 : 77);
      },
      warmUps: 300,
      rounds: 212,
    },
    asked: zones === ASKED_AT ? { peerOverOurs: 1 } : undefined,
  };
}

/** Weeks spread over the season, each in turn; another value every time. */
function edits(): () => { readonly week: number; readonly odd: boolean } {
  let count = 0;
  return () => {
    count++;
    return { week: (count * 19) % WEEKS, odd: count % 2 === 1 };
  };
}

/** What a grid shows of each cell. */
function readCells(zones: readonly ZoneSeason[]): number {
  let sum = 0;
  for (const zone of zones) {
    for (let week = 0; week < zone.weeks; week++) {
      sum += zoneFigure(zone, 'litres', week) + zoneFigure(zone, 'minutes', week);
      sum += zoneFigure(zone, 'rainCreditLitres', week) + zoneFigure(zone, 'state', week);
    }
  }
  return sum;
}
