/** A planting's week, from its days: depths, volumes, and what became of it. */
import type { GardenZone } from '../../src/engine/garden.ts';
import type { PLANTING_FIELDS, State, SUPPLY_FIELDS } from '../../src/engine/season/season.ts';
import type { NearTies } from './near-ties.ts';
import type { DayRecord, PlantingCourse } from './planting-course.ts';
import { daysFrom } from './watering-days.ts';

export type Volumes = Record<keyof typeof SUPPLY_FIELDS, number>;
type Depths = Record<Exclude<keyof typeof PLANTING_FIELDS, 'state'>, number>;
export type PlantingFigures = Depths & Volumes & { readonly state: State };

/** Depths below this make no state: nobody sees them. */
const UNSEEN_MM = 0.05;

/** Of the week that the course has just run. */
export function plantingWeekFigures(zone: GardenZone, course: PlantingCourse, ties: NearTies): PlantingFigures {
  const depths = depthsOf(course, ties);
  return {
    ...depths,
    ...volumesOf(depths, course.facts.planting.areaM2),
    state: stateOf(zone, course, depths, ties),
  };
}

function depthsOf(course: PlantingCourse, ties: NearTies): Depths {
  const { records, requests } = course;
  const sum = (figure: (record: DayRecord) => number) => records.reduce((total, record) => total + figure(record), 0);
  const mask = (holds: (record: DayRecord) => boolean) => sum((record) => (holds(record) ? 1 << (record.day % 7) : 0));
  const asked = requests[0]?.minutes ?? 0;
  return {
    demandMm: sum(({ facts }) => facts.etcMm),
    usedMm: sum(({ usedMm }) => usedMm),
    rainMm: sum(({ facts }) => facts.rainMm),
    rainSoakedMm: sum(({ facts }) => facts.soakedMm),
    rainDrainedMm: sum(({ rainDrainedMm }) => rainDrainedMm),
    irrigationGrossMm: sum(({ minutes, facts }) => minutes * facts.grossMmPerMinute),
    irrigationNetMm: sum(({ irrigationMm }) => irrigationMm),
    irrigationDrainedMm: sum(({ irrigationDrainedMm }) => irrigationDrainedMm),
    depletionStartMm: records[0]?.startMm ?? 0,
    depletionEndMm: records.at(-1)?.endMm ?? 0,
    neededMm: neededMm(course),
    missedMm: records.find(({ missedMm }) => missedMm !== undefined)?.missedMm ?? 0,
    fillingMm: records.length > 0 ? (course.fillingMm ?? 0) : 0,
    minutesWanted: asked < Number.POSITIVE_INFINITY ? asked : 0,
    openDays: records.filter(({ minutes }) => minutes > 0).length,
    openMask: mask(({ minutes }) => minutes > 0),
    dueMask: mask(({ isDue }) => isDue),
    shortDays: records.filter(({ startMm, facts }) => ties.isClearlyAbove(startMm, facts.rawMm)).length,
    groundDays: records.length,
    flowLpm: records.at(-1)?.facts.flowLpm ?? 0,
  };
}

/** Net irrigation that would have brought it to its goal by the last watering, with the weather as it was and no plant short. */
function neededMm({ records, requests, facts }: PlantingCourse): number {
  const last = records.findIndex(({ missedMm }) => missedMm !== undefined);
  const isLeftAlone = facts.planting.watering === 'refill' && !records.some(({ isDue }) => isDue);
  if (last < 0 || isLeftAlone) return 0;
  const goalMm = requests.at(-1)?.goalMm ?? 0;
  const wanted = daysFrom(0, last).map((first) => {
    const startMm = first === 0 ? (records[0]?.startMm ?? 0) : 0;
    return records.slice(first, last + 1).reduce((sum, day) => sum + day.facts.etcMm - day.facts.soakedMm, startMm);
  });
  return Math.max(0, Math.max(0, ...wanted) - goalMm);
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
    storageLitres: areaM2 * (depths.depletionStartMm - depths.depletionEndMm),
    neededLitres: areaM2 * depths.neededMm,
  };
}

/** Worst first, as the season's layout words it. */
function stateOf(zone: GardenZone, course: PlantingCourse, depths: Depths, ties: NearTies): State {
  const last = course.records.at(-1)?.facts;
  if (last === undefined) return 'off';
  const isSeen = (mm: number, limit = 0) => ties.isAbove(mm, limit + UNSEEN_MM);
  // A timer runs whole steps: each run may bring half a step too little, and where it rounds up nearly a step too much.
  const stepMm = zone.timerStepMinutes * last.netMmPerMinute * depths.openDays;
  if (isSeen(depths.depletionEndMm, last.rawMm)) return 'dry';
  if (isSeen(depths.demandMm - depths.usedMm)) return 'short';
  const isRefill = course.facts.planting.watering === 'refill';
  if (isRefill ? wasLeftUnfilled(course) : isSeen(depths.missedMm, Math.max(0.1 * depths.neededMm, stepMm / 2))) {
    return 'short';
  }
  return isSeen(depths.irrigationDrainedMm, stepMm) ? 'over' : 'met';
}

/** A refill that was due, could have been filled on a watering day of the week, and still waits at its end. */
function wasLeftUnfilled({ records, fillingMm }: PlantingCourse): boolean {
  const hadWatering = records.some(({ missedMm }) => missedMm !== undefined);
  return hadWatering && fillingMm !== undefined && records.some(({ isDue }) => isDue);
}
