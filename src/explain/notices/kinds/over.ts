import {
  MINUTES_ORIGINS,
  PLANTING_FIELDS as P,
  type PlantingSeason,
  type Season,
  STATES,
  ZONE_FIELDS as Z,
  type ZoneSeason,
} from '../../../engine/season/season.ts';
import type { FoundNotice, OverFigures } from '../notice.ts';
import { type PlantingWeeks, togetherOf } from '../planting-weeks.ts';
import { weeksWhere } from '../runs.ts';
import { computedMinutes } from '../timer-minutes.ts';
import { wastedMm } from '../waste.ts';

const OVER = STATES.indexOf('over');
const RUN = MINUTES_ORIGINS.indexOf('run');
const HAND_SET = MINUTES_ORIGINS.indexOf('hand-set');
const ROUNDING_MINUTES = 1e-6;
/** From this share of their season's water on, what drains is more than a note. */
const GREAT_SHARE = 0.2;
/** Less than this share of it is not told. */
const LEAST_SHARE = 0.01;

/**
 * Plantings whose irrigation drains away unasked: one notice for each zone, and one for what was set by hand. A warning where it is at
 * least a fifth of all that is applied to them over the season, nothing where it is under a hundredth. A week of which anything was
 * really run is past and not told.
 */
export function over({ zones }: Pick<Season, 'zones'>): readonly FoundNotice<'over' | 'over-by-hand'>[] {
  return zones.flatMap((zone) => [...noticeOf(zone, 'over', false), ...noticeOf(zone, 'over-by-hand', true)]);
}

/** Weeks in which a planting's irrigation drains, because of what was set by hand or not. */
function overWeeks(zone: ZoneSeason, own: PlantingSeason, byHand: boolean): readonly number[] {
  const originIn = (week: number) => zone.figures.at(Z.origin, week);
  return weeksWhere(
    own.weeks,
    (week) =>
      own.at(P.state, week) === OVER &&
      originIn(week) !== RUN &&
      zone.zone.choices.get(week)?.runs === undefined &&
      isByHand(zone, own, week) === byHand,
  );
}

function isByHand(zone: ZoneSeason, own: PlantingSeason, week: number): boolean {
  const at = (field: number) => zone.figures.at(field, week);
  if (at(Z.origin) === HAND_SET && at(Z.minutesPerDay) > computedMinutes(zone, week) + ROUNDING_MINUTES) return true;
  return zone.zone.choices.get(week)?.openDays?.has(own.planting.id) === true;
}

function noticeOf(
  zone: ZoneSeason,
  kind: 'over' | 'over-by-hand',
  byHand: boolean,
): readonly FoundNotice<'over' | 'over-by-hand'>[] {
  const members = zone.plantings
    .map((own): PlantingWeeks => ({ own, weeks: overWeeks(zone, own, byHand) }))
    .filter(({ weeks }) => weeks.length > 0);
  if (members.length === 0) return [];
  const sum = (of: (member: PlantingWeeks) => number) => members.reduce((total, member) => total + of(member), 0);
  const drainedLitres = sum(({ own, weeks }) => litresOf(own, (week) => wastedMm(own, week), weeks));
  const appliedLitres = sum(({ own, weeks }) => litresOf(own, applied(own), weeks));
  const seasonLitres = sum(({ own }) =>
    litresOf(
      own,
      applied(own),
      weeksWhere(own.weeks, () => true),
    ),
  );
  if (drainedLitres < LEAST_SHARE * seasonLitres) return [];
  const figures: OverFigures = {
    drainedLitres,
    appliedLitres,
    drainedShare: drainedLitres / appliedLitres,
    seasonLitres,
  };
  const severity = drainedLitres >= GREAT_SHARE * seasonLitres ? 'warning' : 'note';
  return [{ kind, severity, ...togetherOf(zone, members), figures }];
}

const applied = (own: PlantingSeason) => (week: number) => own.at(P.irrigationGrossMm, week);

function litresOf(own: PlantingSeason, depthMm: (week: number) => number, weeks: readonly number[]): number {
  return own.planting.areaM2 * weeks.reduce((sum, week) => sum + depthMm(week), 0);
}
