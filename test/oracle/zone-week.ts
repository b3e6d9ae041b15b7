/** A zone's week: its days and its plantings added up. */
import type { GardenZone } from '../../src/engine/garden.ts';
import type { MinutesOrigin, State, ZONE_FIELDS } from '../../src/engine/season/season.ts';
import { TOLERANCE } from './near-ties.ts';
import type { DayRecord } from './planting-course.ts';
import type { PlantingDay } from './planting-facts.ts';
import type { PlantingFigures, Volumes } from './week.ts';
import type { ZoneDay, ZoneWeekRun } from './zone-course.ts';

type Figures = Record<Exclude<keyof typeof ZONE_FIELDS, 'state' | 'origin'>, number>;
export type ZoneFigures = Figures & { readonly state: State; readonly origin: MinutesOrigin };

const WORST_FIRST: readonly State[] = ['dry', 'short', 'over', 'met'];

/** A planting's ground, and its days in it of the week. */
interface Stay {
  readonly areaM2: number;
  readonly records: readonly DayRecord[];
}

/** `plantings` and `stays` in the zone's order. */
export function zoneWeekFigures(
  zone: GardenZone,
  { kept, given, runsADay, days }: ZoneWeekRun,
  plantings: readonly PlantingFigures[],
  stays: readonly Stay[],
): ZoneFigures {
  const sum = (figure: (planting: PlantingFigures, areaM2: number) => number) =>
    plantings.reduce((total, planting, place) => total + figure(planting, zone.plantings[place]?.areaM2 ?? 0), 0);
  const groundM2 = sum(({ groundDays }, areaM2) => (groundDays > 0 ? areaM2 : 0));
  const rainStayedLitres = sum((planting) => planting.rainStayedLitres);
  const rainCreditLitres = rainStayedLitres / efficiencyOf(zone, stays);
  const flowOfAllLpm = sum(({ flowLpm }) => flowLpm);
  const minutesPerDay = Math.max(...days.map(({ minutes }) => minutes));
  const origin = given?.origin ?? 'computed';
  const mask = (holds: (day: ZoneDay, offset: number) => boolean) =>
    days.reduce((found, day, offset) => found | (holds(day, offset) ? 1 << offset : 0), 0);
  return {
    ...volumes(sum),
    minutes: days.reduce((total, { minutes }) => total + minutes, 0),
    minutesPerDay,
    runsADay: minutesPerDay > 0 ? runsADay : 0,
    cycles: days.find(({ minutes }) => minutes === minutesPerDay)?.cycles ?? 0,
    rainCreditMm: groundM2 > 0 ? rainStayedLitres / groundM2 : 0,
    rainCreditLitres,
    rainCreditMinutes: flowOfAllLpm > 0 ? rainCreditLitres / flowOfAllLpm : 0,
    flowLpm: sum(({ flowLpm, openMask }) => (openMask === 0 ? 0 : flowLpm)),
    minutesWanted: days.find(({ decision }) => decision !== undefined)?.decision?.wanted ?? 0,
    skippedMask: mask((day, offset) => given?.minutes[offset] === undefined && isSkipped(day, minutesPerDay > 0)),
    decidedMask: mask(({ isAnew }) => isAnew),
    cutLitres: cutLitresOf(days, stays),
    cutShare: 1 - kept,
    minutesDay0: minutesOn(days, 0),
    minutesDay1: minutesOn(days, 1),
    minutesDay2: minutesOn(days, 2),
    minutesDay3: minutesOn(days, 3),
    minutesDay4: minutesOn(days, 4),
    minutesDay5: minutesOn(days, 5),
    minutesDay6: minutesOn(days, 6),
    state: stateOf(origin, plantings),
    origin,
  };
}

/** What its lines give on the last day in the ground of the week, net over gross; where none gives any, the zone's own figure. */
function efficiencyOf(zone: GardenZone, stays: readonly Stay[]): number {
  const sum = (figure: (day: PlantingDay) => number) =>
    stays.reduce((total, { areaM2, records }) => {
      const last = records.at(-1)?.facts;
      return total + (last === undefined ? 0 : areaM2 * figure(last));
    }, 0);
  const gross = sum(({ grossMmPerMinute }) => grossMmPerMinute);
  return gross > 0 ? sum(({ netMmPerMinute }) => netMmPerMinute) / gross : zone.efficiency;
}

/** Of each morning what open lines would have given in the minutes that a cut took. */
function cutLitresOf(days: readonly ZoneDay[], stays: readonly Stay[]): number {
  const openLpm = (offset: number) =>
    stays.reduce((total, { areaM2, records }) => {
      const today = records.find(({ day, isOpen }) => isOpen && day % 7 === offset);
      return total + areaM2 * (today?.facts.grossMmPerMinute ?? 0);
    }, 0);
  return days.reduce((total, { cutMinutes }, offset) => total + cutMinutes * openLpm(offset), 0);
}

/** A watering morning without a run, in a week that runs on another day, or although some minutes were wanted. */
function isSkipped({ decision, minutes }: ZoneDay, runsInWeek: boolean): boolean {
  return decision !== undefined && minutes === 0 && (runsInWeek || decision.wanted > TOLERANCE);
}

function minutesOn(days: readonly ZoneDay[], offset: number): number {
  return days[offset]?.minutes ?? 0;
}

function volumes(sum: (figure: (planting: PlantingFigures) => number) => number): Volumes {
  return {
    litres: sum((planting) => planting.litres),
    rainLitres: sum((planting) => planting.rainLitres),
    demandLitres: sum((planting) => planting.demandLitres),
    usedLitres: sum((planting) => planting.usedLitres),
    rainStayedLitres: sum((planting) => planting.rainStayedLitres),
    irrigationStayedLitres: sum((planting) => planting.irrigationStayedLitres),
    drainedLitres: sum((planting) => planting.drainedLitres),
    lostLitres: sum((planting) => planting.lostLitres),
    storageLitres: sum((planting) => planting.storageLitres),
    neededLitres: sum((planting) => planting.neededLitres),
  };
}

function stateOf(origin: MinutesOrigin, plantings: readonly PlantingFigures[]): State {
  const inGround = plantings.filter(({ groundDays }) => groundDays > 0);
  if (inGround.length === 0) return 'off';
  if (origin === 'closed') return 'closed';
  return WORST_FIRST.find((state) => inGround.some((planting) => planting.state === state)) ?? 'met';
}
