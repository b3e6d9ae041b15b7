import type { Garden } from '../../engine/garden.ts';
import { daysOfMask } from '../../engine/season/days-mask.ts';
import type { Season, ZoneSeason } from '../../engine/season/season.ts';
import { heldMask } from '../../engine/season/week-masks.ts';
import { runMask, zoneFigure } from '../../engine/season/zone-week.ts';
import { seasonSupply } from '../../engine/supply/season-supply.ts';
import type { ZoneCycles } from '../../engine/supply/watering-window.ts';
import { windowHoursOn } from '../../engine/supply/window-hours.ts';
import { zoneCycles } from '../../engine/supply/zone-cycles.ts';
import { type PlacedRun, placeRuns, type WeeklyRun } from './place-runs.ts';

/** When the zones of a week start, as timers are set. */
export interface WeekStarts {
  /** Minutes after midnight from which the others count. */
  readonly opensAtMinute: number;
  /** Whether nobody said when the window opens. */
  readonly isAssumed: boolean;
  readonly windowMinutes: number;
  /** By zone: the same start on all of its days. Zones that do not run in the week are left out. */
  readonly zones: ReadonlyMap<string, ZoneStarts>;
  /** How far the last end lies past the window; 0 where all fits. */
  readonly minutesOver: number;
}

export interface ZoneStarts {
  /** Of each cycle, minutes after midnight; from 1440 on it is the next day. */
  readonly startMinutes: readonly number[];
  readonly endMinute: number;
  readonly minutesPerCycle: number;
  /** From one cycle's end to the next one's start, whole minutes; 0 where there is one cycle. */
  readonly pauseMinutes: number;
}

/** Early morning, when wind and sun take least: common practice, no source. */
const USUAL_OPENING_MINUTE = 5 * 60;

const known = new WeakMap<Season, Map<number, WeekStarts>>();

/**
 * Start times of a week's zones within the watering window, one a zone and cycle all week, so that a timer is set once: by the longest
 * cycle and the most cycles of its days. Zones run one at a time in the garden's order; where that does not fit, longer ones first, then as many together as
 * the source feeds. Throws a RangeError for a week outside the season.
 */
export function weekStarts(season: Season, week: number): WeekStarts {
  if (!(week >= 0 && week < season.garden.span.weeks)) throw new RangeError(`week ${week} is outside the season`);
  const weeks = known.get(season) ?? new Map<number, WeekStarts>();
  known.set(season, weeks);
  const starts = weeks.get(week) ?? startsOf(season, week);
  weeks.set(week, starts);
  return starts;
}

function startsOf(season: Season, week: number): WeekStarts {
  const { supply } = season.garden;
  const running = season.zones.filter((zone) => zoneFigure(zone, 'minutes', week) > 0);
  const runs = running.map((zone) => weeklyRun(zone, week));
  const windowMinutes = 60 * windowHours(season.garden, runs, week);
  const placed = inWindow(runs, windowMinutes, () => sourceLpm(season, week));
  const opensAtMinute = supply.windowOpensAtMinute ?? USUAL_OPENING_MINUTE;
  const entries = running.map((zone, at): [string, ZoneStarts] => {
    const { startMinutes, endMinute } = placed[at] as PlacedRun;
    const { minutesPerCycle } = runs[at] as WeeklyRun;
    const [first = 0, second] = startMinutes;
    return [
      zone.zone.id,
      {
        startMinutes: startMinutes.map((minute) => opensAtMinute + minute),
        endMinute: opensAtMinute + endMinute,
        minutesPerCycle,
        pauseMinutes: second === undefined ? 0 : Math.round(second - first - minutesPerCycle),
      },
    ];
  });
  return {
    opensAtMinute,
    isAssumed: supply.windowOpensAtMinute === undefined,
    windowMinutes,
    zones: new Map(entries),
    minutesOver: Math.max(0, endOf(placed) - windowMinutes),
  };
}

/** Of those days of a week on which something runs and water may run, the fewest hours: the starts are the same on all. */
function windowHours(garden: Garden, runs: readonly WeeklyRun[], week: number): number {
  const mask = runs.reduce((all, run) => all | run.mask, 0);
  const hours = daysOfMask(mask)
    .map((offset) => windowHoursOn(garden, 7 * week + offset))
    .filter((each) => each > 0);
  return Math.min(garden.supply.windowHoursPerDay, ...hours);
}

interface ZoneRun extends WeeklyRun {
  /** Of a day. */
  readonly runs: number;
}

/** Room for each of its days' runs, on every watering day and every other day that runs: a skipped morning keeps its place. */
function weeklyRun(zone: ZoneSeason, week: number): ZoneRun {
  const days = [0, 1, 2, 3, 4, 5, 6].map((day) => zoneCycles(zone, 7 * week + day));
  const most = (figure: (day: ZoneCycles) => number) => Math.max(...days.map(figure));
  return {
    mask: heldMask(zone.zone, week) | runMask(zone, week),
    minutesPerCycle: most((day) => day.minutesPerCycle),
    cycles: most((day) => day.cycles),
    runs: zoneFigure(zone, 'runsADay', week),
    pauseMinutes: most((day) => day.soakMinutes),
    flowLpm: zoneFigure(zone, 'flowLpm', week),
  };
}

/**
 * The first way that fits the window, else the one that ends first. Where a day has several runs, its cycles stand as far apart as the window
 * lets them, else as its soil does.
 */
function inWindow(runs: readonly ZoneRun[], windowMinutes: number, limitLpm: () => number): readonly PlacedRun[] {
  const inOrder = runs.map((_, at) => at);
  const longestFirst = inOrder.toSorted(
    (one, other) => minutesIn(runs[other] as ZoneRun) - minutesIn(runs[one] as ZoneRun),
  );
  const apart = runs.some((run) => run.runs > 1) ? [runs.map((run) => asApart(run, windowMinutes))] : [];
  const ways = [...apart, runs].flatMap((laid) =>
    [() => 0, limitLpm].flatMap((limit) =>
      [inOrder, longestFirst].map((order) => () => placedIn(order, laid, limit())),
    ),
  );
  let best: readonly PlacedRun[] | undefined;
  for (const way of ways) {
    const placed = way();
    if (best === undefined || endOf(placed) < endOf(best)) best = placed;
    if (endOf(best) <= windowMinutes) break;
  }
  return best ?? [];
}

function endOf(placed: readonly PlacedRun[]): number {
  return Math.max(0, ...placed.map(({ endMinute }) => endMinute));
}

/** Cycles of a day with several runs, evenly through the window. */
function asApart(run: ZoneRun, windowMinutes: number): WeeklyRun {
  const { runs, cycles, minutesPerCycle, pauseMinutes } = run;
  const apart = Math.floor((windowMinutes - minutesPerCycle) / (cycles - 1)) - minutesPerCycle;
  return runs > 1 ? { ...run, pauseMinutes: Math.max(pauseMinutes, apart) } : run;
}

function minutesIn(run: WeeklyRun): number {
  return run.cycles * run.minutesPerCycle + (run.cycles - 1) * run.pauseMinutes;
}

function placedIn(order: readonly number[], runs: readonly WeeklyRun[], limitLpm: number): readonly PlacedRun[] {
  const placed = placeRuns(
    order.map((at) => runs[at] as WeeklyRun),
    limitLpm,
  );
  return runs.map((_, at) => placed[order.indexOf(at)] as PlacedRun);
}

/** The least that the source gives in the week, 0 where it is not known. */
function sourceLpm(season: Season, week: number): number {
  const { flowLpm } = seasonSupply(season).sources;
  const least = Math.min(...flowLpm.subarray(7 * week, 7 * week + 7));
  return Number.isNaN(least) ? 0 : least;
}
