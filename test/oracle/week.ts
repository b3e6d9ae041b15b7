/** A planting's week, from its days: depths, volumes, and what became of it. */
import type { GardenZone } from '../../src/engine/garden.ts';
import type { PLANTING_FIELDS, State, SUPPLY_FIELDS } from '../../src/engine/season/season.ts';
import { overAll } from './day.ts';
import type { NearTies } from './near-ties.ts';
import type { DayRecord, PlantingCourse } from './planting-course.ts';
import { daysFrom, isInMask, wateringOf } from './watering-days.ts';
import type { ZoneWeekRun } from './zone-course.ts';

export type Volumes = Record<keyof typeof SUPPLY_FIELDS, number>;
type Depths = Record<Exclude<keyof typeof PLANTING_FIELDS, 'state'>, number>;
export type PlantingFigures = Depths & Volumes & { readonly state: State };

/** Depths below this make no state: nobody sees them. */
const UNSEEN_MM = 0.05;

/** Of the week that the course has just run. */
export function plantingWeekFigures(
  { zone, run, ties }: { readonly zone: GardenZone; readonly run: ZoneWeekRun; readonly ties: NearTies },
  course: PlantingCourse,
): PlantingFigures {
  const depths = depthsOf(zone, run, course);
  return {
    ...depths,
    ...volumesOf(depths, course.facts.planting.areaM2),
    state: stateOf(zone, run, course, { depths, ties }),
  };
}

function depthsOf(zone: GardenZone, run: ZoneWeekRun, course: PlantingCourse): Depths {
  const { records, requests } = course;
  const sum = (figure: (record: DayRecord) => number) => records.reduce((total, record) => total + figure(record), 0);
  const asked = requests[0] ?? 0;
  return {
    demandMm: sum(({ facts }) => facts.etcMm),
    usedMm: sum(({ usedMm }) => usedMm),
    rainMm: sum(({ facts }) => facts.rainMm),
    rainSoakedMm: sum(({ facts }) => facts.soakedMm),
    rainDrainedMm: sum(({ rainDrainedMm }) => rainDrainedMm),
    irrigationGrossMm: sum(({ minutes, facts }) => minutes * facts.grossMmPerMinute),
    irrigationNetMm: sum(({ irrigationMm }) => irrigationMm),
    irrigationDrainedMm: sum(({ irrigationDrainedMm }) => irrigationDrainedMm),
    unaskedMm: sum(({ unaskedMm }) => unaskedMm),
    depletionStartMm: records[0]?.startMm ?? 0,
    depletionEndMm: endOf(course),
    wettedEndMm: records.at(-1)?.end.wettedMm ?? 0,
    dryEndMm: records.at(-1)?.end.dryMm ?? 0,
    rootedMm: sum(({ facts }) => facts.rootedMm),
    neededMm: neededMm(zone, course),
    missedMm: sum(({ missedMm }) => missedMm),
    fillingMm: records.length > 0 ? (course.fillingMm ?? 0) : 0,
    minutesWanted: asked < Number.POSITIVE_INFINITY ? asked : 0,
    openDays: records.filter(({ minutes }) => minutes > 0).length,
    openMask: openMaskOf(zone, run, course),
    dueMask: course.dueOn.reduce((found, day) => found | (1 << (day % 7)), 0),
    shortDays: records.filter(({ isShort }) => isShort).length,
    groundDays: records.length,
    flowLpm: records.at(-1)?.facts.flowLpm ?? 0,
  };
}

/**
 * Days in the ground on which its line is open: the days named for its shut-off, or else watering days and others that were run. Of a week
 * that was written down by day, a shut-off was open only on days that were run: as was written, or else as named. None in a week in
 * which the zone does not run at all.
 */
function openMaskOf(zone: GardenZone, { given, days }: ZoneWeekRun, { records, mask, facts }: PlantingCourse): number {
  if (days.every(({ minutes }) => minutes === 0)) return 0;
  const { hasShutOff, id } = facts.planting;
  const logged = given?.loggedDays;
  const waters = wateringOf(zone);
  const isOpen = (offset: number, day: number) => {
    if (!hasShutOff) return waters(day) || logged?.includes(offset) === true;
    if (given?.origin === 'run' && logged?.includes(offset) === false) return false;
    return given?.open(offset)?.has(id) ?? isInMask(mask ?? 0, offset);
  };
  return records.reduce((found, { day }) => found | (isOpen(day % 7, day) ? 1 << (day % 7) : 0), 0);
}

/**
 * Net irrigation that would have brought it to its goal by its last watering, with the weather as it was and no plant short; where lines wet a part
 * of the ground, with what the rest gave as it was. The
 * goal is that of the zone's last watering day, which knows of all forecasts. For a refill, what was missing when it became due.
 */
function neededMm(zone: GardenZone, course: PlantingCourse): number {
  const { records, facts, toFillMm } = course;
  const { share } = course.stores;
  if (facts.planting.watering === 'refill') return toFillMm.reduce((sum, mm) => sum + share * mm, 0);
  const last = records.findIndex(({ isLast }) => isLast);
  const first = records[0];
  if (first === undefined || last < 0) return 0;
  const wanted = daysFrom(0, last).map((from) => {
    const startMm = from === 0 ? first.start.wettedMm : (records[from]?.facts.rootedMm ?? 0);
    return records.slice(from, last + 1).reduce((sum, { askedOfWettedMm, facts: { soakedMm, rootedMm } }, place) => {
      return sum + askedOfWettedMm - soakedMm + (place > 0 ? rootedMm : 0);
    }, startMm);
  });
  const weekStart = first.day - (first.day % 7);
  const lastMorning = daysFrom(weekStart, weekStart + 6).findLast(wateringOf(zone));
  return share * Math.max(0, Math.max(0, ...wanted) - course.goalOn(lastMorning ?? first.day));
}

function volumesOf(depths: Depths, areaM2: number): Volumes {
  const lostMm = depths.rainMm - depths.rainSoakedMm + depths.irrigationGrossMm - depths.irrigationNetMm;
  return {
    litres: areaM2 * depths.irrigationGrossMm,
    rainLitres: areaM2 * depths.rainMm,
    demandLitres: areaM2 * depths.demandMm,
    usedLitres: areaM2 * depths.usedMm,
    rainStayedLitres: areaM2 * (depths.rainSoakedMm - depths.rainDrainedMm),
    irrigationStayedLitres: areaM2 * (depths.irrigationNetMm - depths.irrigationDrainedMm),
    drainedLitres: areaM2 * (depths.rainDrainedMm + depths.irrigationDrainedMm),
    lostLitres: areaM2 * lostMm,
    storageLitres: areaM2 * (depths.depletionStartMm - depths.depletionEndMm + depths.rootedMm),
    neededLitres: areaM2 * depths.neededMm,
  };
}

/** Worst first, as the season's layout words it. One that rests at the week's end is neither dry nor short. */
function stateOf(
  zone: GardenZone,
  { runsADay }: ZoneWeekRun,
  course: PlantingCourse,
  { depths, ties }: { readonly depths: Depths; readonly ties: NearTies },
): State {
  const last = course.records.at(-1)?.facts;
  if (last === undefined) return 'off';
  const isSeen = (mm: number, limit = 0) => ties.isAbove(mm, limit + UNSEEN_MM);
  const stepMm = zone.timerStepMinutes * last.netMmPerMinute;
  if (!last.isResting) {
    if (isSeen(drynessOf(course), last.rawMm)) return 'dry';
    if (isSeen(depths.demandMm - depths.usedMm)) return 'short';
    if (isLeftShort(zone, course, depths, isSeen)) return 'short';
  }
  // What drained though nobody asked for it; what washes salt away is to drain. Each of a day's runs may be rounded up by nearly a step.
  const meantMm = course.facts.leachingFraction * depths.irrigationNetMm;
  const wastedMm = Math.min(depths.unaskedMm, depths.irrigationDrainedMm - meantMm);
  return isSeen(wastedMm, stepMm * depths.openDays * runsADay) ? 'over' : 'met';
}

/** Whether it got too little of what it asked for. */
function isLeftShort(
  zone: GardenZone,
  course: PlantingCourse,
  depths: Depths,
  isSeen: (mm: number, limit?: number) => boolean,
): boolean {
  // Due on a morning, and not filled by the week's end.
  if (course.facts.planting.watering === 'refill') return course.dueOn.length > 0 && course.fillingMm !== undefined;
  // A timer runs whole steps: each morning may bring half a step too little.
  const stepMm = zone.timerStepMinutes * (course.records.at(-1)?.facts.netMmPerMinute ?? 0);
  const lostToSteps = (stepMm / 2) * ownMornings(zone, course);
  return isSeen(depths.missedMm, Math.max(0.1 * depths.neededMm, lostToSteps));
}

/** Depletion at the week's end of the store from which its plants can still drink most readily. */
function drynessOf({ records, stores }: PlantingCourse): number {
  const last = records.at(-1);
  if (last === undefined) return 0;
  const hasOther = stores.share < 1 && !last.facts.isEstablishing;
  return hasOther ? Math.min(last.end.wettedMm, last.end.dryMm) : last.end.wettedMm;
}

/** Over all of its ground, at the week's end. */
function endOf({ records, stores }: PlantingCourse): number {
  const last = records.at(-1);
  return last === undefined ? 0 : overAll(stores, last.end);
}

/** Watering days of the week in the ground, up to its last watering. */
function ownMornings(zone: GardenZone, { records }: PlantingCourse): number {
  const last = records.findIndex(({ isLast }) => isLast);
  const waters = wateringOf(zone);
  return records.slice(0, last + 1).filter(({ day }) => waters(day)).length;
}
