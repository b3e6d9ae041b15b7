/** A zone's week from its plantings' weeks. */
import { grossIrrigation } from '../application/run-time.ts';
import type { GardenZone } from '../garden.ts';
import { fewestCycles, nearestRun } from '../soil/cycle-and-soak.ts';
import {
  MINUTES_ORIGINS,
  PLANTING_FIELDS as P,
  type PlantingSeason,
  STATES,
  SUPPLY_FIELD_COUNT,
  ZONE_FIELDS as Z,
  type ZoneSeason,
} from './season.ts';
import type { ZoneMember } from './zone-member.ts';
import type { ZoneWeekRun } from './zone-run.ts';

const COMPUTED_ORIGIN = MINUTES_ORIGINS.indexOf('computed');
const CLOSED_ORIGIN = MINUTES_ORIGINS.indexOf('closed');
const CLOSED = STATES.indexOf('closed');
const OFF = STATES.indexOf('off');

/** Fills the zone's figures of a week; its plantings' are already there. */
export function sumZoneWeek(season: ZoneSeason, members: readonly ZoneMember[], week: number, run: ZoneWeekRun): void {
  const { zone, figures, weeks, plantings } = season;
  for (let field = 0; field < SUPPLY_FIELD_COUNT; field++) figures[field * weeks + week] = 0;
  let areaM2 = 0;
  let flowLpm = 0;
  let openFlowLpm = 0;
  let state = OFF;
  for (let at = 0; at < plantings.length; at++) {
    const { planting } = plantings[at] as PlantingSeason;
    const its = (members[at] as ZoneMember).figures;
    if (its[P.groundDays * weeks + week] === 0) continue;
    addVolumes(figures, its, { weeks, week, areaM2: planting.areaM2 });
    const lineLpm = its[P.flowLpm * weeks + week] as number;
    areaM2 += planting.areaM2;
    flowLpm += lineLpm;
    if (its[P.openMask * weeks + week] !== 0) openFlowLpm += lineLpm;
    state = Math.min(state, its[P.state * weeks + week] as number);
  }
  const stayedLitres = figures[Z.rainStayedLitres * weeks + week] as number;
  const creditLitres = grossIrrigation(stayedLitres, zone.efficiency);
  let minutes = 0;
  let longest = 0;
  for (let day = 0; day < 7; day++) {
    const ofDay = run.minutes[day] as number;
    figures[(Z.minutesDay0 + day) * weeks + week] = ofDay;
    minutes += ofDay;
    if (ofDay > longest) longest = ofDay;
  }
  figures[Z.minutes * weeks + week] = minutes;
  figures[Z.minutesPerDay * weeks + week] = longest;
  figures[Z.cycles * weeks + week] = cyclesOf(zone, longest, run.origin);
  figures[Z.minutesWanted * weeks + week] = run.wanted;
  figures[Z.skippedMask * weeks + week] = run.skippedMask;
  figures[Z.decidedMask * weeks + week] = run.decidedMask;
  figures[Z.rainCreditMm * weeks + week] = areaM2 > 0 ? stayedLitres / areaM2 : 0;
  figures[Z.rainCreditLitres * weeks + week] = creditLitres;
  figures[Z.rainCreditMinutes * weeks + week] = flowLpm > 0 ? creditLitres / flowLpm : 0;
  figures[Z.flowLpm * weeks + week] = openFlowLpm;
  figures[Z.state * weeks + week] = run.origin === CLOSED_ORIGIN && state !== OFF ? CLOSED : state;
  figures[Z.origin * weeks + week] = run.origin;
}

/** Of a day's minutes: what the timer would make of them, and of minutes by hand as few as keep each within the longest. */
export function cyclesOf(zone: GardenZone, minutes: number, origin: number): number {
  if (minutes === 0) return 0;
  if (origin === COMPUTED_ORIGIN) return nearestRun(minutes, zone).cycles;
  return Math.min(fewestCycles(minutes, zone.longestCycleMinutes), zone.startsADay);
}

/** The same relations as `plantingVolume`, all at once. */
function addVolumes(
  figures: Float64Array,
  own: Float64Array,
  { weeks, week, areaM2 }: { readonly weeks: number; readonly week: number; readonly areaM2: number },
): void {
  const rain = own[P.rainMm * weeks + week] as number;
  const soaked = own[P.rainSoakedMm * weeks + week] as number;
  const rainDrained = own[P.rainDrainedMm * weeks + week] as number;
  const gross = own[P.irrigationGrossMm * weeks + week] as number;
  const net = own[P.irrigationNetMm * weeks + week] as number;
  const irrigationDrained = own[P.irrigationDrainedMm * weeks + week] as number;
  const stored = (own[P.depletionStartMm * weeks + week] as number) - (own[P.depletionEndMm * weeks + week] as number);
  const add = (field: number, mm: number) => {
    figures[field * weeks + week] = (figures[field * weeks + week] as number) + mm * areaM2;
  };
  add(Z.litres, gross);
  add(Z.rainLitres, rain);
  add(Z.demandLitres, own[P.demandMm * weeks + week] as number);
  add(Z.usedLitres, own[P.usedMm * weeks + week] as number);
  add(Z.rainStayedLitres, soaked - rainDrained);
  add(Z.irrigationStayedLitres, net - irrigationDrained);
  add(Z.drainedLitres, rainDrained + irrigationDrained);
  add(Z.lostLitres, rain - soaked + gross - net);
  add(Z.storageLitres, stored);
  add(Z.neededLitres, own[P.neededMm * weeks + week] as number);
}
