/** What may help a zone whose plantings go short, whose water drains or runs off, or that runs too long. */
import type { GardenZone } from '../../../engine/garden.ts';
import { PLANTING_FIELDS as P, type Season, STATES } from '../../../engine/season/season.ts';
import { type Notice, plantingsOf } from '../../../explain/notices/notice.ts';
import { wastedMm } from '../../../explain/notices/waste.ts';
import { daysByMonth } from '../days-by-month.ts';
import { fewerMinutes } from '../fewer-minutes.ts';
import { laidInWeeks } from '../laid-in-weeks.ts';
import { ownZonesOnOtherDays } from '../own-days.ts';
import type { NoticeInPlan, RemedyCandidate, RemedyCandidates } from '../remedy.ts';
import { smallerSteps } from '../timer-steps.ts';
import { evenDays, moreDays } from '../weekdays.ts';
import { lineChanges, ownZones, rules, shutOffs, zoneContext } from '../zone-changes.ts';

/** Starts a day of timers that are sold: common practice, no source. */
const MOST_STARTS_SOLD = 16;

/** Starts a day that are tried for containers. */
const STARTS_TRIED = [2, 3, 4, 6, 8] as const;

/** Shares of the allowed depletion that watering may leave. */
const ROOMS = [0.3, 0.5] as const;

/** Parts of the water that drains that fewer minutes are to spare. */
const PARTS = [1, 0.75, 0.5] as const;

const OVER = STATES.indexOf('over');

/** Watered too seldom. */
export function* fewDaysCandidates(of: NoticeInPlan): RemedyCandidates {
  const zone = zoneOf(of);
  if (zone === undefined) return;
  yield* evenDays(of, zone);
  yield* daysByMonth(of, zone.id);
  yield* moreDays(of, zone);
}

/** Asks for more than the timer can run, or than a day has. */
export function* beyondTimerCandidates(of: NoticeInPlan<'beyond-timer'>): RemedyCandidates {
  const zone = zoneOf(of);
  const context = zoneContext(of);
  if (zone === undefined || context === undefined) return;
  yield* moreStarts(zone, of.notice);
  yield* smallerSteps(zone);
  yield* moreDays(of, zone);
  yield* lineChanges(context);
  yield* ownZones(context, plantingsOf(of.notice));
}

/** Gets too little of the zone's minutes: behind its shut-off, by the zone's rule, or for a cause that is not known. */
export function* leftBehindCandidates(of: NoticeInPlan): RemedyCandidates {
  const zone = zoneOf(of);
  const ids = plantingsOf(of.notice);
  const context = zoneContext(of, ids);
  if (zone === undefined || context === undefined) return;
  yield* keptWatered(zone, ids);
  yield* rules(context);
  yield* withoutShutOff(zone, ids);
  yield* smallerSteps(zone);
  yield* moreDays(of, zone);
  yield* lineChanges(context);
  yield* ownZones(context, ids);
}

/** Drains past the roots. */
export function* overCandidates(of: NoticeInPlan): RemedyCandidates {
  const zone = zoneOf(of);
  const ids = plantingsOf(of.notice);
  const context = zoneContext(of);
  const own = zoneContext(of, ids);
  if (zone === undefined || context === undefined || own === undefined) return;
  yield* moreRoom(zone, ids);
  yield* rules(context);
  yield* smallerSteps(zone);
  yield* evenDays(of, zone);
  yield* moreDays(of, zone);
  yield* shutOffs(own);
  yield* lineChanges({ ...context, laid: laidInWeeks(of, context) });
  yield* ownZones(context, ids);
  yield* ownZonesOnOtherDays(of, context, ids, zone);
  for (const part of PARTS) {
    yield* fewerMinutes(of.plan, of.season, (season) => sharesThatStay(season, zone.id, ids, part), {
      onlyZone: zone.id,
      // A part taken off again and again would be all of it.
      ...(part < 1 && { mostRounds: 1 }),
    });
  }
}

/** For each week in which water of the plantings drains, the share of its minutes to keep so that so great a part of the worst one's does not. */
function sharesThatStay(
  season: Season,
  zoneId: string,
  ids: readonly string[],
  part: number,
): ReadonlyMap<number, number> {
  const shares = new Map<number, number>();
  const found = season.zones.find(({ zone }) => zone.id === zoneId);
  for (const own of found?.plantings.filter(({ planting }) => ids.includes(planting.id)) ?? []) {
    for (let week = 0; week < own.weeks; week++) {
      if (own.at(P.state, week) !== OVER) continue;
      const share = 1 - (part * wastedMm(own, week)) / own.at(P.irrigationNetMm, week);
      shares.set(week, Math.min(share, shares.get(week) ?? 1));
    }
  }
  return shares;
}

/** A step of the timer lays on more than the soil takes in: a timer whose step it takes in, or else the finest there is. */
export function* stepTooLongCandidates(of: NoticeInPlan<'step-too-long'>): RemedyCandidates {
  const zone = zoneOf(of);
  const context = zoneContext(of);
  if (zone === undefined || context === undefined) return;
  const steps = smallerSteps(zone);
  const taken = steps.filter(({ timerStepMinutes }) => timerStepMinutes <= of.notice.figures.longestCycleMinutes);
  yield* taken.length > 0 ? taken : steps.slice(-1);
  yield* lineChanges(context);
}

/** Runs longer than water may run. */
export function* tooLongCandidates(of: NoticeInPlan): RemedyCandidates {
  const zone = zoneOf(of);
  const context = zoneContext(of);
  if (zone === undefined || context === undefined) return;
  yield* moreDays(of, zone);
  yield* rules(context);
  yield* lineChanges(context);
  yield* ownZones(
    context,
    zone.plantings.map(({ id }) => id),
  );
}

/** Its lines wet too little of its ground: more rows, more emitters, closer ones, or ones that give more. */
export function* wettedTooLittleCandidates(of: NoticeInPlan): RemedyCandidates {
  const context = zoneContext(of, plantingsOf(of.notice));
  if (context === undefined) return;
  yield* lineChanges(context);
}

/** A container does not last: more runs a day, or more days. */
export function* potDriesOutCandidates(of: NoticeInPlan<'pot-dries-out'>): RemedyCandidates {
  const zone = zoneOf(of);
  if (zone === undefined) return;
  yield* moreRuns(zone);
  yield* moreDays(of, zone);
  const context = zoneContext(of);
  if (context !== undefined) yield* ownZones(context, plantingsOf(of.notice));
}

function moreRuns({ id, startsADay: now }: GardenZone): readonly RemedyCandidate[] {
  return STARTS_TRIED.filter((startsADay) => startsADay > now).map((startsADay) => withStarts(id, startsADay));
}

function withStarts(zoneId: string, startsADay: number): RemedyCandidate {
  return {
    kind: 'more-starts',
    zoneId,
    startsADay,
    edit: { type: 'change-zone', zone: zoneId, change: { startsADay } },
  };
}

function zoneOf({ season, notice }: NoticeInPlan): GardenZone | undefined {
  return season.garden.zones.find(({ id }) => id === notice.zoneId);
}

/** As many starts as all that is asked for would take. */
function moreStarts(
  { id, startsADay: now }: GardenZone,
  { figures }: Notice<'beyond-timer'>,
): readonly RemedyCandidate[] {
  const { minutesAsked, cycleMinutes } = figures;
  if (cycleMinutes === undefined) return [];
  const startsADay = Math.ceil(minutesAsked / cycleMinutes - 1e-9);
  if (startsADay <= now || startsADay > MOST_STARTS_SOLD) return [];
  return [withStarts(id, startsADay)];
}

/** Plantings that are kept watered and left a little drier. */
function moreRoom({ id, plantings }: GardenZone, ids: readonly string[]): readonly RemedyCandidate[] {
  return plantings
    .filter((planting) => planting.watering === 'keep' && ids.includes(planting.id))
    .flatMap(({ id: planting, rootZone }) =>
      ROOMS.filter((room) => room > rootZone.targetDepletion).map((targetDepletion): RemedyCandidate => {
        const edit = { type: 'change-planting', zone: id, planting, change: { target: targetDepletion } } as const;
        return { kind: 'more-room', plantingId: planting, targetDepletion, edit };
      }),
    );
}

function keptWatered({ id, plantings }: GardenZone, ids: readonly string[]): readonly RemedyCandidate[] {
  return plantings
    .filter((planting) => planting.watering === 'refill' && ids.includes(planting.id))
    .map((planting) => ({
      kind: 'keep-watered',
      plantingId: planting.id,
      edit: { type: 'change-planting', zone: id, planting: planting.id, change: { watering: 'keep' } },
    }));
}

function withoutShutOff({ id, plantings }: GardenZone, ids: readonly string[]): readonly RemedyCandidate[] {
  return plantings
    .filter((planting) => planting.hasShutOff && ids.includes(planting.id))
    .map(({ id: planting, watering }) => ({
      kind: 'no-shut-off',
      plantingId: planting,
      edit: { type: 'change-planting', zone: id, planting, change: { shutOff: false, watering } },
    }));
}
