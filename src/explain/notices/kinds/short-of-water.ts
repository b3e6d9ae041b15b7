import { countDays } from '../../../engine/season/days-mask.ts';
import { LEAST_SHOWN_MM } from '../../../engine/season/planting-state.ts';
import {
  PLANTING_FIELDS as P,
  type PlantingSeason,
  type Season,
  ZONE_FIELDS as Z,
  type ZoneSeason,
} from '../../../engine/season/season.ts';
import { weekMask } from '../../../engine/season/week-masks.ts';
import type { FoundNotice, LeftBehindFigures, NoticeFigures } from '../notice.ts';
import { type PlantingWeeks, togetherOf, weeksOfAll } from '../planting-weeks.ts';
import { atLeast, type NoticeSeverity } from '../severity.ts';
import { type Shortage, type ShortageCause, shortageIn, shortageOfAll, shortageWeeks } from '../shortage.ts';
import { isBoundByDay, mostMinutes } from '../timer-minutes.ts';

/** Kinds of notice that tell of a lack of water: one for each cause. */
const SHORTAGE_KINDS = {
  'no-line': 'no-line',
  closed: 'closed',
  'by-hand': 'short-by-hand',
  'as-run': 'short-as-run',
  cut: 'cut-short',
  restricted: 'restricted',
  'beyond-timer': 'beyond-timer',
  'shut-off': 'shut-off-short',
  'left-behind': 'left-behind',
  'few-days': 'few-days',
  'dry-spell': 'dry-spell',
  short: 'short',
} as const satisfies Readonly<Record<ShortageCause, keyof NoticeFigures>>;

const CAUSES = Object.keys(SHORTAGE_KINDS) as readonly ShortageCause[];

/** From these shares of its weeks' demand unmet on, a planting that dries out is in danger, and one that goes short is to be checked: rule of this kit. */
const DANGER_SHARE = 0.05;
const WARNING_SHARE = 0.02;

/** Plantings that go short of water: one notice for each zone and cause, for all its plantings and weeks. */
export function shortOfWater(season: Season): readonly FoundNotice[] {
  return season.zones.flatMap((zone) => CAUSES.flatMap((cause) => noticeOf(season, zone, cause) ?? []));
}

function noticeOf(season: Season, zone: ZoneSeason, cause: ShortageCause): FoundNotice | undefined {
  const members = zone.plantings
    .map((own): PlantingWeeks => ({ own, weeks: shortageWeeks(season, zone, own)[cause] ?? [] }))
    .filter(({ weeks }) => weeks.length > 0);
  if (members.length === 0) return undefined;
  const shortage = shortageOfAll(members.map(({ own, weeks }) => shortageIn(own, weeks)));
  const subject = togetherOf(zone, members);
  const severity = severityOf(cause, shortage, members);
  const told = { severity, ...subject };
  switch (cause) {
    case 'beyond-timer':
      return { kind: cause, ...told, figures: { ...shortage, ...beyondTimer(zone, members) } };
    case 'shut-off':
    case 'left-behind':
      return { kind: SHORTAGE_KINDS[cause], ...told, figures: { ...shortage, ...widestGap(zone, members) } };
    case 'few-days':
      return { kind: cause, ...told, figures: { ...shortage, ...wateringDays(zone, members) } };
    default:
      return { kind: SHORTAGE_KINDS[cause], ...told, figures: shortage };
  }
}

/** The fewest and the most that it has in one of the weeks. */
function wateringDays({ zone }: ZoneSeason, members: readonly PlantingWeeks[]) {
  const counts = weeksOfAll(members).map((week) => countDays(weekMask(zone, week)));
  return { fewestDays: Math.min(...counts), mostDays: Math.max(...counts) };
}

/** Of the demand of those weeks what is unmet, 0 to 1. */
export function unmetShare({ unmetLitres, demandLitres }: Shortage): number {
  return demandLitres > 0 ? Math.min(1, Math.max(0, unmetLitres / demandLitres)) : 0;
}

/** What is past, as logged or as read, can only be noted. */
function severityOf(cause: ShortageCause, shortage: Shortage, members: readonly PlantingWeeks[]): NoticeSeverity {
  if (cause === 'as-run' || cause === 'dry-spell') return 'note';
  const share = unmetShare(shortage);
  const areaM2 = members.reduce((sum, { own }) => sum + own.planting.areaM2, 0);
  const isUnmet = shortage.unmetLitres > LEAST_SHOWN_MM * areaM2;
  let severity: NoticeSeverity = 'note';
  if (isUnmet && (shortage.dryWeeks > 0 || share >= WARNING_SHARE)) severity = 'warning';
  if (shortage.dryWeeks > 0 && share >= DANGER_SHARE) severity = 'danger';
  return cause === 'no-line' ? atLeast('warning', severity) : severity;
}

/** The week in which most is asked for. */
function beyondTimer(zone: ZoneSeason, members: readonly PlantingWeeks[]) {
  const { startsADay, longestCycleMinutes, timerStepMinutes } = zone.zone;
  const cycleMinutes = Math.max(1, Math.floor(longestCycleMinutes / timerStepMinutes + 1e-9)) * timerStepMinutes;
  return {
    minutesAsked: weeksOfAll(members).reduce((most, week) => Math.max(most, wantedIn(zone, week)), 0),
    mostMinutes: mostMinutes(zone.zone),
    startsADay,
    ...(isBoundByDay(zone.zone) ? {} : { cycleMinutes }),
  };
}

function wantedIn({ figures }: ZoneSeason, week: number): number {
  return figures.at(Z.minutesWanted, week);
}

function widestGap({ figures }: ZoneSeason, members: readonly PlantingWeeks[]): LeftBehindFigures {
  let gap = { minutesAsked: 0, minutesPerDay: 0 };
  const askedBy = (own: PlantingSeason, week: number) => own.at(P.minutesWanted, week);
  for (const { own, weeks } of members) {
    for (const week of weeks) {
      const minutesAsked = askedBy(own, week);
      const minutesPerDay = figures.at(Z.minutesPerDay, week);
      if (minutesAsked - minutesPerDay > gap.minutesAsked - gap.minutesPerDay) gap = { minutesAsked, minutesPerDay };
    }
  }
  return gap;
}
