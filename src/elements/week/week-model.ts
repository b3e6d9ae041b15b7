/** A week as somebody at the timer sees it: what each zone runs on each day, what was run, what is held. */
import { type DayNumber, dayNumber, type IsoDate, isIsoDate, isoDate } from '../../engine/calendar.ts';
import { plantingFigure } from '../../engine/season/planting-week.ts';
import type { PlantingSeason, Season, ZoneSeason } from '../../engine/season/season.ts';
import { minutesOnDay, zoneFigure, zoneState } from '../../engine/season/zone-week.ts';
import { zoneCycles } from '../../engine/supply/zone-cycles.ts';
import { weekStarts } from '../../explain/schedule/week-starts.ts';
import { computeSeason } from '../../plan/compute-season.ts';
import { applyEdit } from '../../plan/edits/apply-edit.ts';
import { ownValue } from '../../plan/edits/change.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { readWeek } from '../../plan/edits/week-records.ts';
import type { Plan, PlanWeekRun } from '../../plan/schema/plan-schema.ts';
import { dayRunOf } from '../../sheet/entry/run-edits.ts';
import type { ReadyView } from '../shared/plan-state.ts';
import { todayHere } from '../shared/today-here.ts';

export const DAYS = [0, 1, 2, 3, 4, 5, 6] as const;

/** `none`: no run, and none was to be; `skipped`: a watering day that needs none; `changed`: run otherwise than planned. */
export type DayState = 'none' | 'to-run' | 'done' | 'changed' | 'skipped';

export interface ZoneDay {
  /** Of the week, 0 = its first. */
  readonly offset: number;
  readonly minutes: number;
  readonly cycles: number;
  readonly minutesPerCycle: number;
  readonly state: DayState;
  /** What it was to run, by what was known that morning. */
  readonly planned: number;
  readonly isLogged: boolean;
}

/** What is looked at: one week of an open plan. */
export interface WeekContext {
  readonly view: ReadyView;
  readonly week: number;
  readonly firstDay: DayNumber;
  /** By the reader's calendar. */
  readonly today: DayNumber;
  /** Asks why a zone's week is so; left out where nobody answers. */
  readonly ask?: ((zoneId: string) => void) | undefined;
}

/** A day that is none is today. */
export function dayOf(day: IsoDate = todayHere()): DayNumber {
  return dayNumber(isIsoDate(day) ? day : todayHere());
}

/** The week of the season that holds a day; nothing outside the season. */
export function weekHolding({ garden }: Season, day: DayNumber): number | undefined {
  const week = Math.floor((day - garden.span.firstDay) / 7);
  return week >= 0 && week < garden.span.weeks ? week : undefined;
}

export function runOf({ plan }: ReadyView, zoneId: string, firstDay: DayNumber): PlanWeekRun | undefined {
  return readWeek<PlanWeekRun>(ownValue(plan.log?.runs, zoneId), plan.season, isoDate(firstDay));
}

/** Whether all of the week is logged, so that nothing of it is computed. */
export function isClosed({ view, firstDay }: WeekContext, zone: ZoneSeason): boolean {
  const run = runOf(view, zone.zone.id, firstDay);
  return run !== undefined && (typeof run === 'number' || run.rest === undefined);
}

/** Zones with something in the ground that are not closed by hand. */
export function openZones({ view, week }: WeekContext): readonly ZoneSeason[] {
  return view.season.zones.filter((zone) => {
    const state = zoneState(zone, week);
    return state !== 'off' && (state !== 'closed' || zoneFigure(zone, 'minutes', week) > 0);
  });
}

export function zoneDays(context: WeekContext, zone: ZoneSeason): readonly ZoneDay[] {
  return DAYS.map((offset) => zoneDay(context, zone, offset));
}

export function zoneDay(context: WeekContext, zone: ZoneSeason, offset: number): ZoneDay {
  const { view, week, firstDay } = context;
  const { minutesPerCycle, cycles } = zoneCycles(zone, 7 * week + offset);
  const minutes = minutesOnDay(zone, 7 * week + offset);
  const run = runOf(view, zone.zone.id, firstDay);
  const day = isoDate(firstDay + offset);
  const isLogged = run !== undefined && (typeof run === 'number' ? minutes > 0 : run.days[day] !== undefined);
  const isSkipped = ((zoneFigure(zone, 'skippedMask', week) >> offset) & 1) === 1;
  const of = { offset, minutes, cycles, minutesPerCycle, isLogged };
  if (!isLogged) {
    const state = minutes > 0 ? 'to-run' : isSkipped ? 'skipped' : 'none';
    return { ...of, planned: minutes, state };
  }
  const before = zoneIn(seasonBefore(context, offset), zone);
  const planned = minutesOnDay(before, 7 * week + offset);
  const isAsPlanned = planned === minutes && sameOpen(context, zone, before, offset);
  if (isAsPlanned) return { ...of, planned, state: minutes > 0 ? 'done' : 'skipped' };
  return { ...of, planned, state: 'changed' };
}

function sameOpen({ week, firstDay }: WeekContext, zone: ZoneSeason, before: ZoneSeason, offset: number): boolean {
  const [ran, planned] = [zone, before].map((each) => dayRunOf({ zone: each, week, firstDay }, offset).open ?? []);
  return ran?.length === planned?.length && (ran ?? []).every((id) => planned?.includes(id));
}

const zoneIn = (season: Season, { zone }: ZoneSeason): ZoneSeason =>
  season.zones.find((each) => each.zone.id === zone.id) as ZoneSeason;

const before = new WeakMap<Plan, Map<number, Season>>();

/** The season as it stood on a morning: what is logged of that day and later ones of its week is left out. */
function seasonBefore({ view, firstDay, week }: WeekContext, offset: number): Season {
  const { plan, season } = view;
  const known = before.get(plan) ?? new Map<number, Season>();
  before.set(plan, known);
  const day = 7 * week + offset;
  const made = known.get(day) ?? withoutLater(view, firstDay, isoDate(firstDay + offset)) ?? season;
  known.set(day, made);
  return made;
}

function withoutLater(view: ReadyView, firstDay: DayNumber, from: IsoDate): Season | undefined {
  const { plan, season } = view;
  const edits = plan.zones.flatMap(({ id }): Edit[] => {
    const run = runOf(view, id, firstDay);
    if (run === undefined) return [];
    const days = typeof run === 'number' ? [] : Object.entries(run.days).filter(([day]) => day < from);
    const earlier = days.length === 0 ? undefined : ({ days: Object.fromEntries(days), rest: 'computed' } as const);
    return [{ type: 'set-week-run', zone: id, week: isoDate(firstDay), run: earlier }];
  });
  if (edits.length === 0) return undefined;
  return computeSeason(applyEdit(plan, { type: 'together', edits }), season);
}

/** Plantings whose shut-off a person turns, in the ground that week. */
export function turnedPlantings(zone: ZoneSeason, week: number): readonly PlantingSeason[] {
  return zone.plantings.filter((each) => each.planting.hasShutOff && plantingFigure(each, 'groundDays', week) > 0);
}

/** Days on which its line is open, bit 0 = the week's first. */
export function openMaskOf(planting: PlantingSeason, week: number): number {
  return plantingFigure(planting, 'openMask', week);
}

export interface TodayRun {
  readonly zone: ZoneSeason;
  /** Its place in the garden, from 1: the timer's station. */
  readonly station: number;
  readonly day: ZoneDay;
  /** Of each cycle, minutes after midnight. */
  readonly startMinutes: readonly number[];
  readonly pauseMinutes: number;
}

/** What runs on a day, in the order of its starts. */
export function runsOn(context: WeekContext, offset: number): readonly TodayRun[] {
  const { view, week } = context;
  const starts = weekStarts(view.season, week);
  return view.season.zones
    .map((zone, index): TodayRun => {
      const day = zoneDay(context, zone, offset);
      const of = starts.zones.get(zone.zone.id);
      return {
        zone,
        station: index + 1,
        day,
        startMinutes: of?.startMinutes.slice(0, Math.max(1, day.cycles)) ?? [],
        pauseMinutes: day.cycles > 1 ? (of?.pauseMinutes ?? 0) : 0,
      };
    })
    .filter(({ day }) => day.minutes > 0 || (day.isLogged && day.planned > 0))
    .sort((one, other) => (one.startMinutes[0] ?? 0) - (other.startMinutes[0] ?? 0));
}

/** Litres that the zones run on a day of the week. */
export function litresOn({ view, week }: WeekContext, offset: number): number {
  return view.season.zones.reduce((sum, zone) => {
    const minutes = zoneFigure(zone, 'minutes', week);
    if (minutes === 0) return sum;
    const open = zone.plantings.reduce((flow, each) => {
      const isOpen = (plantingFigure(each, 'openMask', week) >> offset) & 1;
      return flow + (isOpen ? plantingFigure(each, 'flowLpm', week) : 0);
    }, 0);
    return sum + open * minutesOnDay(zone, 7 * week + offset);
  }, 0);
}

/** Whether anything that ran is logged at all: who never logs is not asked to. */
export function hasLog({ plan }: ReadyView): boolean {
  return Object.values(plan.log?.runs ?? {}).some((weeks) => Object.keys(weeks).length > 0);
}
