/** Published tables by how near their places are to a garden. */
import { greatCircleDistanceKm } from '../../engine/climate/great-circle-distance.ts';
import { PUBLISHED_ETO, PUBLISHED_ETO_TIME_ZONE, type PublishedEto } from '../../engine/climate/published-eto.data.ts';
import type { PlanSite } from '../../plan/schema/plan-schema.ts';
import { NEAR_KM } from './near-km.ts';

/** No place of California is farther from all of those that have a table. */
const WITHIN_CALIFORNIA_KM = 450;

export interface TableByDistance {
  readonly table: PublishedEto;
  readonly km: number;
}

export interface TablesBySite {
  /** Nearest first; empty where none is. */
  readonly near: readonly TableByDistance[];
  readonly far: readonly TableByDistance[];
  /** Those of a region, where the garden may lie in it. */
  readonly regions: readonly PublishedEto[];
}

const REGIONS = PUBLISHED_ETO.filter(({ at }) => at === undefined);

/** Undefined where the garden's place is not known. */
export function tablesBySite({ latitude, longitude, timeZone }: PlanSite): TablesBySite | undefined {
  if (longitude === undefined) return undefined;
  const here = { latitudeDeg: latitude, longitudeDeg: longitude };
  const isAbroad = timeZone !== undefined && timeZone !== PUBLISHED_ETO_TIME_ZONE;
  const places = PUBLISHED_ETO.flatMap((table) =>
    table.at === undefined ? [] : [{ table, km: greatCircleDistanceKm(here, table.at) }],
  ).sort((one, other) => one.km - other.km);
  const isNear = ({ km }: TableByDistance) => km <= NEAR_KM && !isAbroad;
  const mayBeThere = !isAbroad && places.some(({ km }) => km <= WITHIN_CALIFORNIA_KM);
  return {
    near: places.filter(isNear),
    far: places.filter((place) => !isNear(place)),
    regions: mayBeThere ? REGIONS : [],
  };
}
