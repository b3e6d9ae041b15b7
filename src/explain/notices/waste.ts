/** Irrigation of a planting's week that drained for nothing. */
import { wastedOf } from '../../engine/season/planting-state.ts';
import { PLANTING_FIELDS as P, type PlantingSeason } from '../../engine/season/season.ts';

/** Less what it had asked for, and what is to carry salt away: mm over all of the planting. */
export function wastedMm(own: PlantingSeason, week: number): number {
  const leachedMm = own.demand.leachingFraction * own.at(P.irrigationNetMm, week);
  return wastedOf(own.at(P.irrigationDrainedMm, week), leachedMm, own.at(P.unaskedMm, week));
}
