import {
  MINUTES_ORIGINS,
  PLANTING_FIELDS as P,
  type PlantingSeason,
  type Season,
  STATES,
  ZONE_FIELDS as Z,
  type ZoneSeason,
} from '../../../engine/season/season.ts';
import { eachPlanting, placeOf } from '../each-planting.ts';
import type { FoundNotice, NoticeRemedy } from '../notice.ts';
import { oneRunOf, weeksWhere } from '../runs.ts';

const OVER = STATES.indexOf('over');
const COMPUTED = MINUTES_ORIGINS.indexOf('computed');
/** From this share of the water on, what drains is more than a note. */
const GREAT_SHARE = 0.25;

/**
 * Plantings whose irrigation drains away: one notice each, for all such weeks. A warning where at least a quarter of
 * what was applied then is lost so, else a note.
 */
export function over(season: Season): readonly FoundNotice<'over'>[] {
  return eachPlanting(season, (zone, own) => {
    return oneRunOf(weeksWhere(own.weeks, (week) => own.at(P.state, week) === OVER)).map((run): FoundNotice<'over'> => {
      const drainedLitres = litresOf(own, P.irrigationDrainedMm, run.weeks);
      const appliedLitres = litresOf(own, P.irrigationGrossMm, run.weeks);
      const drainedShare = drainedLitres / appliedLitres;
      return {
        kind: 'over',
        severity: drainedShare >= GREAT_SHARE ? 'warning' : 'note',
        remedy: remedyOf(zone, own, run.weeks),
        ...placeOf(zone, own),
        ...run,
        figures: { drainedLitres, appliedLitres, drainedShare },
      };
    });
  });
}

function litresOf(own: PlantingSeason, field: number, weeks: readonly number[]): number {
  return own.planting.areaM2 * weeks.reduce((sum, week) => sum + own.at(field, week), 0);
}

function remedyOf(
  { zone, figures, weeks: count }: ZoneSeason,
  { planting }: PlantingSeason,
  weeks: readonly number[],
): NoticeRemedy {
  if (weeks.some((week) => figures[Z.origin * count + week] !== COMPUTED)) return 'use-computed';
  // A planting that is alone in its zone gets the minutes that it asks for: a valve before it holds nothing back.
  return planting.hasShutOff || zone.plantings.length === 1 ? 'change-line' : 'shut-off';
}
