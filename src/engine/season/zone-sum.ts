/** A zone's week from its plantings' weeks. */
import { grossIrrigation } from '../application/run-time.ts';
import { fewestCycles, nearestRun } from '../soil/cycle-and-soak.ts';
import { MINUTES_ORIGINS, PLANTING_FIELDS as P, STATES, SUPPLY_FIELD_COUNT, ZONE_FIELDS as Z } from './season.ts';
import { addVolumes } from './volume-depths.ts';
import type { WeekTimer } from './week-timer.ts';
import type { ZoneMember } from './zone-member.ts';
import type { ZoneRun, ZoneWeekRun } from './zone-run.ts';

const CLOSED_ORIGIN = MINUTES_ORIGINS.indexOf('closed');
const CLOSED = STATES.indexOf('closed');
const OFF = STATES.indexOf('off');

const ROUNDING_MINUTES = 1e-9;

/** Fills in the zone's figures of a week; its plantings' are already there. */
export function sumZoneWeek({ season, members, week: run }: ZoneRun): void {
  const { figures, at: from } = run;
  for (let field = 0; field < SUPPLY_FIELD_COUNT; field++) figures[from + field] = 0;
  let areaM2 = 0;
  let flowLpm = 0;
  let netLpm = 0;
  let openFlowLpm = 0;
  let state = OFF;
  for (const member of members) {
    const { at: its, days, outlook, areaM2: ownM2 } = member;
    if (figures[its + P.groundDays] === 0) continue;
    addVolumes(figures, from, its, ownM2);
    const lineLpm = figures[its + P.flowLpm] as number;
    areaM2 += ownM2;
    flowLpm += lineLpm;
    netLpm += (days.netMmPerMinute[outlook.end - 1] as number) * ownM2;
    if (figures[its + P.openMask] !== 0) openFlowLpm += lineLpm;
    state = Math.min(state, figures[its + P.state] as number);
  }
  const stayedLitres = figures[from + Z.rainStayedLitres] as number;
  const creditLitres = grossIrrigation(
    stayedLitres,
    flowLpm > 0 ? Math.min(1, netLpm / flowLpm) : season.zone.efficiency,
  );
  let minutes = 0;
  let longest = 0;
  for (let day = 0; day < 7; day++) {
    const ofDay = run.minutes[day] as number;
    figures[from + Z.minutesDay0 + day] = ofDay;
    minutes += ofDay;
    if (ofDay > longest) longest = ofDay;
  }
  figures[from + Z.minutes] = minutes;
  figures[from + Z.minutesPerDay] = longest;
  figures[from + Z.cycles] = cyclesOf(run.timer, longest);
  figures[from + Z.runsADay] = longest > 0 ? run.timer.runsADay : 0;
  figures[from + Z.minutesWanted] = run.wanted;
  figures[from + Z.skippedMask] = run.skippedMask;
  figures[from + Z.decidedMask] = run.decidedMask;
  figures[from + Z.rainCreditMm] = areaM2 > 0 ? stayedLitres / areaM2 : 0;
  figures[from + Z.rainCreditLitres] = creditLitres;
  figures[from + Z.rainCreditMinutes] = flowLpm > 0 ? creditLitres / flowLpm : 0;
  figures[from + Z.flowLpm] = openFlowLpm;
  figures[from + Z.state] = run.origin === CLOSED_ORIGIN && state !== OFF ? CLOSED : state;
  figures[from + Z.origin] = run.origin;
  figures[from + Z.cutShare] = run.cutShare;
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

/** Of a day's minutes: those that the timer can be set to for just them; of others as few as keep each within the longest. */
export function cyclesOf(timer: WeekTimer, minutes: number): number {
  const settable = settableCycles(timer, minutes);
  if (settable !== undefined) return settable;
  const { longestCycleMinutes, startsADay, runsADay } = timer;
  return runsADay * Math.min(fewestCycles(minutes / runsADay, longestCycleMinutes), Math.floor(startsADay / runsADay));
}

/** Those that the timer can be set to for just these minutes of a day; undefined where it cannot. */
export function settableCycles(timer: WeekTimer, minutes: number): number | undefined {
  const nearest = nearestRun(minutes, timer);
  // A logged day of under half a step ran all the same.
  const isIt = nearest.cycles > 0 ? Math.abs(nearest.minutes - minutes) <= ROUNDING_MINUTES : minutes === 0;
  return isIt ? nearest.cycles : undefined;
}
