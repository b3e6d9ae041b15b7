/** How much a planting went without in some weeks. */
import { LEAST_SHOWN_MM } from '../../engine/season/planting-state.ts';
import { PLANTING_FIELDS as P, type PlantingSeason, STATES } from '../../engine/season/season.ts';
import type { NoticeSeverity } from './notice.ts';

export interface Lack {
  /** Demand that the plants could not meet, L. */
  readonly unmetLitres: number;
  /** Net water that would have brought it to its target, L. */
  readonly neededLitres: number;
  /** Net water that irrigation brought, L. */
  readonly netLitres: number;
  /** Days on which it was short of water. */
  readonly shortDays: number;
  /** Weeks that ended beyond the allowed depletion. */
  readonly dryWeeks: number;
}

const DRY = STATES.indexOf('dry');

export function lackOf(own: PlantingSeason, weeks: readonly number[]): Lack {
  const { areaM2 } = own.planting;
  const lack = { unmetLitres: 0, neededLitres: 0, netLitres: 0, shortDays: 0, dryWeeks: 0 };
  for (const week of weeks) {
    const at = (field: number) => own.at(field, week);
    lack.unmetLitres += areaM2 * (at(P.demandMm) - at(P.usedMm));
    lack.neededLitres += areaM2 * at(P.neededMm);
    lack.netLitres += areaM2 * at(P.irrigationNetMm);
    lack.shortDays += at(P.shortDays);
    if (at(P.state) === DRY) lack.dryWeeks++;
  }
  return lack;
}

/** danger: some week ends dry; warning: demand goes unmet; note: only a target is missed. */
export function lackSeverity({ dryWeeks, unmetLitres }: Lack, areaM2: number): NoticeSeverity {
  if (dryWeeks > 0) return 'danger';
  return unmetLitres > LEAST_SHOWN_MM * areaM2 ? 'warning' : 'note';
}

/** The worse of two. */
export function atLeast(least: NoticeSeverity, severity: NoticeSeverity): NoticeSeverity {
  const order: readonly NoticeSeverity[] = ['danger', 'warning', 'note'];
  return order.indexOf(severity) < order.indexOf(least) ? severity : least;
}
