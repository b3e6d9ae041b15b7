/** A zone's week from its plantings' weeks. */
import { grossIrrigation } from '../application/run-time.ts';
import { fewestCycles, nearestRun } from '../soil/cycle-and-soak.ts';
import {
  MINUTES_ORIGINS,
  PLANTING_FIELDS as P,
  STATES,
  SUPPLY_FIELD_COUNT,
  ZONE_FIELDS as Z,
  type ZoneSeason,
} from './season.ts';
import type { WeekTimer } from './week-timer.ts';
import type { ZoneMember } from './zone-member.ts';
import { COMPUTED, type ZoneWeekRun } from './zone-run.ts';

const CLOSED_ORIGIN = MINUTES_ORIGINS.indexOf('closed');
const CLOSED = STATES.indexOf('closed');
const OFF = STATES.indexOf('off');

/** Fills the zone's figures of a week; its plantings' are already there. */
export function sumZoneWeek(season: ZoneSeason, members: readonly ZoneMember[], week: number, run: ZoneWeekRun): void {
  const { zone, figures } = season;
  const row = figures.rows[week] as number[];
  row.fill(0, 0, SUPPLY_FIELD_COUNT);
  let areaM2 = 0;
  let flowLpm = 0;
  let netLpm = 0;
  let openFlowLpm = 0;
  let state = OFF;
  for (let at = 0; at < members.length; at++) {
    const { week: its, days, outlook, areaM2: ownM2 } = members[at] as ZoneMember;
    if (its[P.groundDays] === 0) continue;
    addVolumes(row, its, ownM2);
    const lineLpm = its[P.flowLpm] as number;
    areaM2 += ownM2;
    flowLpm += lineLpm;
    netLpm += (days.netMmPerMinute[outlook.end - 1] as number) * ownM2;
    if (its[P.openMask] !== 0) openFlowLpm += lineLpm;
    state = Math.min(state, its[P.state] as number);
  }
  const stayedLitres = row[Z.rainStayedLitres] as number;
  const creditLitres = grossIrrigation(stayedLitres, flowLpm > 0 ? Math.min(1, netLpm / flowLpm) : zone.efficiency);
  const put = (field: number, value: number) => {
    row[field] = value;
  };
  let minutes = 0;
  let longest = 0;
  for (let day = 0; day < 7; day++) {
    const ofDay = run.minutes[day] as number;
    put(Z.minutesDay0 + day, ofDay);
    minutes += ofDay;
    if (ofDay > longest) longest = ofDay;
  }
  put(Z.minutes, minutes);
  put(Z.minutesPerDay, longest);
  put(Z.cycles, cyclesOf(run.timer, longest, run.origin, run.cutShare));
  put(Z.runsADay, longest > 0 ? run.timer.runsADay : 0);
  put(Z.minutesWanted, run.wanted);
  put(Z.skippedMask, run.skippedMask);
  put(Z.decidedMask, run.decidedMask);
  put(Z.rainCreditMm, areaM2 > 0 ? stayedLitres / areaM2 : 0);
  put(Z.rainCreditLitres, creditLitres);
  put(Z.rainCreditMinutes, flowLpm > 0 ? creditLitres / flowLpm : 0);
  put(Z.flowLpm, openFlowLpm);
  put(Z.state, run.origin === CLOSED_ORIGIN && state !== OFF ? CLOSED : state);
  put(Z.origin, run.origin);
}

/** What the open lines would have brought in the minutes that were cut. */
export function cutLitres(members: readonly ZoneMember[], { cutMinutes, start }: ZoneWeekRun): number {
  let litres = 0;
  for (const { openMask, days, areaM2, outlook } of members) {
    for (let day = outlook.first; day < outlook.end; day++) {
      const open = (openMask >> (day - start)) & 1;
      litres += open * (cutMinutes[day - start] as number) * (days.grossMmPerMinute[day] as number) * areaM2;
    }
  }
  return litres;
}

/** Of a day's minutes: what the timer would make of them, and of minutes by hand, or that a cut left, as few as keep each within the longest. */
export function cyclesOf(timer: WeekTimer, minutes: number, origin: number, cutShare: number): number {
  if (minutes === 0) return 0;
  if (origin === COMPUTED && cutShare === 0) return nearestRun(minutes, timer).cycles;
  const { longestCycleMinutes, startsADay, runsADay } = timer;
  return runsADay * Math.min(fewestCycles(minutes / runsADay, longestCycleMinutes), Math.floor(startsADay / runsADay));
}

/** The same relations as `plantingVolume`, all at once. */
function addVolumes(row: number[], own: readonly number[], areaM2: number): void {
  const of = (field: number) => own[field] as number;
  const rain = of(P.rainMm);
  const soaked = of(P.rainSoakedMm);
  const rainDrained = of(P.rainDrainedMm);
  const gross = of(P.irrigationGrossMm);
  const net = of(P.irrigationNetMm);
  const irrigationDrained = of(P.irrigationDrainedMm);
  const before = of(P.depletionStartMm) + of(P.rootedMm);
  const stored = before - of(P.depletionEndMm);
  const add = (field: number, mm: number) => {
    row[field] = (row[field] as number) + mm * areaM2;
  };
  add(Z.litres, gross);
  add(Z.rainLitres, rain);
  add(Z.demandLitres, of(P.demandMm));
  add(Z.usedLitres, of(P.usedMm));
  add(Z.rainStayedLitres, soaked - rainDrained);
  add(Z.irrigationStayedLitres, net - irrigationDrained);
  add(Z.drainedLitres, rainDrained + irrigationDrained);
  add(Z.lostLitres, rain - soaked + gross - net);
  add(Z.storageLitres, stored);
  add(Z.neededLitres, of(P.neededMm));
}
