/** A planting's week: the real balance with the minutes that were found, and what became of it. */
import type { GardenZone } from '../../src/engine/garden.ts';
import type { PLANTING_FIELDS, State, SUPPLY_FIELDS } from '../../src/engine/season/season.ts';
import { realDay } from './day.ts';
import { groundDays, isShort, isWatered, type Need, type NeedQuestion } from './need.ts';
import { wateringDayCount, type ZoneMinutes } from './zone-minutes.ts';

export type Volumes = Record<keyof typeof SUPPLY_FIELDS, number>;
type Depths = Record<Exclude<keyof typeof PLANTING_FIELDS, 'state'>, number>;
export type PlantingFigures = Depths & Volumes & { readonly state: State };

/** Depths below this make no state: nobody sees them. */
const UNSEEN_MM = 0.05;

export interface WateredWeek {
  readonly zone: GardenZone;
  readonly question: NeedQuestion;
  readonly need: Need;
  readonly minutes: ZoneMinutes;
  readonly openMask: number;
}

export function plantingWeekFigures(watered: WateredWeek): PlantingFigures {
  const depths = runWeek(watered);
  return {
    ...depths,
    ...volumesOf(depths, watered.question.facts.planting.areaM2),
    state: stateOf(watered, depths),
  };
}

function runWeek({ question, need, minutes, openMask }: WateredWeek): Depths {
  const { facts, week, depletionMm } = question;
  const days = groundDays(facts, week);
  const inGround = days.length > 0;
  const total = { ...NO_WATER };
  let depletion = depletionMm;
  for (const { day, offset } of days) {
    const run = isWatered(openMask, offset) ? minutes.perDay : 0;
    const irrigationMm = run * day.netMmPerMinute;
    const balance = realDay(day, facts.tawMm, depletion, irrigationMm);
    if (isShort(depletion, day)) total.shortDays += 1;
    total.demandMm += day.etcMm;
    total.usedMm += balance.usedMm;
    total.rainMm += day.rainMm;
    total.rainSoakedMm += day.soakedMm;
    total.rainDrainedMm += balance.drainedMm - balance.irrigationDrainedMm;
    total.irrigationGrossMm += run * day.grossMmPerMinute;
    total.irrigationNetMm += irrigationMm;
    total.irrigationDrainedMm += balance.irrigationDrainedMm;
    depletion = balance.endMm;
  }
  return {
    ...total,
    depletionStartMm: inGround ? depletionMm : 0,
    depletionEndMm: inGround ? depletion : 0,
    neededMm: need.neededMm,
    minutesWanted: need.minutes < Number.POSITIVE_INFINITY ? need.minutes : 0,
    openDays: wateringDayCount(openMask),
    openMask,
    groundDays: days.length,
    flowLpm: days.at(-1)?.day.flowLpm ?? 0,
  };
}

const NO_WATER = {
  demandMm: 0,
  usedMm: 0,
  rainMm: 0,
  rainSoakedMm: 0,
  rainDrainedMm: 0,
  irrigationGrossMm: 0,
  irrigationNetMm: 0,
  irrigationDrainedMm: 0,
  shortDays: 0,
};

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
function stateOf({ zone, question, need, minutes }: WateredWeek, depths: Depths): State {
  const last = groundDays(question.facts, question.week).at(-1)?.day;
  if (last === undefined) return 'off';
  if (depths.depletionEndMm > last.rawMm + UNSEEN_MM) return 'dry';
  const wasShort = depths.demandMm - depths.usedMm > UNSEEN_MM;
  const keeps = question.facts.planting.watering === 'keep';
  if (wasShort || (keeps && depths.depletionEndMm > need.endGoalMm + UNSEEN_MM)) return 'short';
  const rounding = minutes.origin === 'computed' ? minutes.perDay - minutes.wanted : 0;
  const roundingMm = Math.max(zone.timerStepMinutes, rounding) * depths.openDays * last.netMmPerMinute;
  return depths.irrigationDrainedMm > roundingMm + UNSEEN_MM ? 'over' : 'met';
}
