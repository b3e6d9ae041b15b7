/** What may help a zone whose plantings go short, whose water drains or runs off, or that runs too long. */
import type { GardenZone } from '../../../engine/garden.ts';
import { type NoticeKind, plantingsOf } from '../../../explain/notices/notice.ts';
import type { NoticeInPlan, RemedyCandidate, RemedyCandidates } from '../remedy.ts';
import { evenDays, moreDays } from '../weekdays.ts';
import { lineChanges, ownZones, rules, shutOffs, zoneContext } from '../zone-changes.ts';

/** Steps of the timers that are sold, minutes: common practice, no source. */
const TIMER_STEPS = [30, 15, 10, 5, 2, 1] as const;

/** Watered too seldom. */
export function* fewDaysCandidates(of: NoticeInPlan): RemedyCandidates {
  const zone = zoneOf(of);
  if (zone === undefined) return;
  yield* evenDays(of.season, zone);
  yield* moreDays(of.season, zone);
}

/** Asks for more than the timer can run, or than a day has. */
export function* beyondTimerCandidates(of: NoticeInPlan): RemedyCandidates {
  const zone = zoneOf(of);
  const context = zoneContext(of);
  if (zone === undefined || context === undefined) return;
  yield* smallerSteps(zone);
  yield* moreDays(of.season, zone);
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
  yield* moreDays(of.season, zone);
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
  yield* rules(context);
  yield* smallerSteps(zone);
  yield* evenDays(of.season, zone);
  yield* moreDays(of.season, zone);
  yield* shutOffs(own);
  yield* lineChanges(context);
  yield* ownZones(context, ids);
}

/** A step of the timer lays on more than the soil takes in. */
export function* stepTooLongCandidates(of: NoticeInPlan): RemedyCandidates {
  const zone = zoneOf(of);
  const context = zoneContext(of);
  if (zone === undefined || context === undefined) return;
  yield* smallerSteps(zone);
  yield* lineChanges(context);
}

/** Runs longer than water may run. */
export function* tooLongCandidates(of: NoticeInPlan<NoticeKind>): RemedyCandidates {
  const zone = zoneOf(of);
  const context = zoneContext(of);
  if (zone === undefined || context === undefined) return;
  yield* moreDays(of.season, zone);
  yield* rules(context);
  yield* lineChanges(context);
  yield* ownZones(
    context,
    zone.plantings.map(({ id }) => id),
  );
}

function zoneOf({ season, notice }: NoticeInPlan): GardenZone | undefined {
  return season.garden.zones.find(({ id }) => id === notice.zoneId);
}

function smallerSteps({ id, timerStepMinutes: now }: GardenZone): readonly RemedyCandidate[] {
  return TIMER_STEPS.filter((step) => step < now).map((timerStepMinutes) => ({
    kind: 'smaller-step',
    zoneId: id,
    timerStepMinutes,
    edit: { type: 'change-zone', zone: id, change: { timerStepMinutes } },
  }));
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
