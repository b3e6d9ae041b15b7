/** What a season's calendar holds: a run of a zone on each of its watering days, and the turns of shut-offs by hand. */
import type { DayNumber } from '../../engine/calendar.ts';
import { openRunMask, plantingFigure } from '../../engine/season/planting-week.ts';
import type { PlantingSeason, Season, ZoneSeason } from '../../engine/season/season.ts';
import { minutesOnDay } from '../../engine/season/zone-week.ts';
import { seasonSupply } from '../../engine/supply/season-supply.ts';
import { zoneCycles } from '../../engine/supply/zone-cycles.ts';
import { type WeekStarts, weekStarts } from '../../explain/schedule/week-starts.ts';

/** A zone's watering of one day. Minutes are counted from the opening of the watering window. */
export interface WateringRun {
  readonly zone: ZoneSeason;
  readonly day: DayNumber;
  /** Of the season, from 0. */
  readonly week: number;
  readonly minutes: number;
  readonly minutesPerCycle: number;
  /** Of each cycle, in order; at least one. */
  readonly startMinutes: readonly number[];
  readonly litres: number;
  /** Plantings with a shut-off that are in the ground that week. */
  readonly open: readonly PlantingSeason[];
  readonly shut: readonly PlantingSeason[];
  /** Those of them that stood otherwise at the zone's run before; all of them before the first. */
  readonly toOpen: readonly PlantingSeason[];
  readonly toShut: readonly PlantingSeason[];
  /** Whether the week's waterings end within the window. */
  readonly fits: boolean;
}

/** Which weeks, and which zones by their id. */
export interface CalendarExtent {
  /** Of the season, from 0; the last one counts. Left out: all. */
  readonly weeks?: { readonly first: number; readonly last: number } | undefined;
  readonly zones?: ReadonlySet<string> | undefined;
}

/** By day, then in the garden's order. A step is a day, so that long seasons can be written a little at a time. */
export function* wateringRuns(season: Season, extent: CalendarExtent): Generator<undefined, WateringRun[]> {
  const { firstDay, weeks } = season.garden.span;
  const first = Math.max(0, extent.weeks?.first ?? 0);
  const last = Math.min(weeks - 1, extent.weeks?.last ?? weeks - 1);
  const runs: WateringRun[] = [];
  const before = new Map<PlantingSeason, boolean>();
  for (let day = 7 * first; day < 7 * (last + 1); day += 1) {
    const starts = weekStarts(season, Math.floor(day / 7));
    season.zones.forEach((zone, index) => {
      if (extent.zones !== undefined && !extent.zones.has(zone.zone.id)) return;
      if (minutesOnDay(zone, day) > 0) runs.push(runOf({ season, zone, index, day, firstDay, starts, before }));
    });
    yield;
  }
  return runs;
}

interface ZoneOnDay {
  readonly season: Season;
  readonly zone: ZoneSeason;
  /** Of the zone in the season. */
  readonly index: number;
  /** Of the season, from 0. */
  readonly day: number;
  readonly firstDay: DayNumber;
  readonly starts: WeekStarts;
  /** Whether a planting's shut-off was open when its zone ran last. */
  readonly before: Map<PlantingSeason, boolean>;
}

function runOf({ season, zone, index, day, firstDay, starts, before }: ZoneOnDay): WateringRun {
  const week = Math.floor(day / 7);
  const minutes = minutesOnDay(zone, day);
  const { minutesPerCycle, cycles } = zoneCycles(zone, day);
  // The timer is set for the week's longest day; a shorter one has the first of its starts.
  const startMinutes = (starts.zones.get(zone.zone.id)?.startMinutes ?? [])
    .slice(0, cycles)
    .map((minute) => minute - starts.opensAtMinute);
  const turned = zone.plantings.filter(
    (each) => each.planting.hasShutOff && plantingFigure(each, 'groundDays', week) > 0,
  );
  const isOpen = (each: PlantingSeason) => ((openRunMask(zone, each, week) >> (day % 7)) & 1) === 1;
  const open = turned.filter(isOpen);
  const shut = turned.filter((each) => !isOpen(each));
  const toOpen = open.filter((each) => before.get(each) !== true);
  const toShut = shut.filter((each) => before.get(each) !== false);
  for (const each of turned) before.set(each, isOpen(each));
  const flowLpm = seasonSupply(season).flows[index]?.[day] as number;
  return {
    zone,
    day: firstDay + day,
    week,
    minutes,
    minutesPerCycle,
    startMinutes,
    litres: minutes * flowLpm,
    open,
    shut,
    toOpen,
    toShut,
    fits: starts.minutesOver === 0,
  };
}
