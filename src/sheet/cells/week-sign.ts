import { type State, SUPPLY_FIELDS, type ZoneSeason } from '../../engine/season/season.ts';
import { zoneState } from '../../engine/season/zone-week.ts';

/** A sign in the corner of a week: only for what somebody should do something about. */
export type WeekSign = Extract<State, 'dry' | 'short' | 'over' | 'closed'>;

/** Less than this share of what the plants of a zone would use in a week is not worth a sign. */
const LEAST_SHARE = 0.05;

/**
 * The sign of a zone's week; undefined for none. A week that goes short, or is overwatered, has one where it can still be helped: not
 * before this week, and not for a lack that nobody sees. `thisWeek` undefined = every week lies ahead.
 */
export function weekSign(zone: ZoneSeason, week: number, thisWeek: number | undefined): WeekSign | undefined {
  const state = zoneState(zone, week);
  if (state === 'closed') return state;
  if (week < (thisWeek ?? 0)) return undefined;
  if (state === 'over') return state;
  return (state === 'dry' || state === 'short') && lackOf(zone, week) >= LEAST_SHARE ? state : undefined;
}

/** The part of what a zone's plants would use in a week that they do not get. */
function lackOf({ figures }: ZoneSeason, week: number): number {
  const at = (field: number) => figures.at(field, week);
  const demand = at(SUPPLY_FIELDS.demandLitres);
  return demand > 0 ? (demand - at(SUPPLY_FIELDS.usedLitres)) / demand : 0;
}
