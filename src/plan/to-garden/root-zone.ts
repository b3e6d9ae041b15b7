/** The root zone of a planting: what the plan says of it, and what is published where the plan leaves it out. */
import type { RootZone } from '../../engine/garden.ts';
import { findCrop, isAnnualCrop } from '../../engine/plants/find-crop.ts';
import { LANDSCAPE_ROOTS } from '../../engine/plants/landscape-roots.data.ts';
import type { PlantTypeId } from '../../engine/plants/plant-types.data.ts';
import type { WaterUseClassId } from '../../engine/plants/water-use-classes.data.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { DEFAULTS } from '../defaults.ts';
import type { PlanNeed, PlanPlanting } from '../schema/plan-schema.ts';
import { inSi } from './in-si.ts';

/** What a plan may say of a root zone, in its own units. */
export type PlanRoots = Pick<PlanPlanting, 'rootDepth' | 'allowedDepletion' | 'target' | 'startDepletion'>;

type Roots = Pick<RootZone, 'depthM' | 'allowedDepletion'>;

type LandscapeRootsId = 'annual-flowers' | 'perennials-and-groundcover' | 'shrubs' | 'trees';

/** Which row stands for a type or class: the reading of this kit, and on the shallow, careful side where one covers several. */
const ROOTS_OF_CLASS: Readonly<Record<WaterUseClassId, LandscapeRootsId>> = {
  'very-low': 'shrubs',
  low: 'shrubs',
  moderate: 'perennials-and-groundcover',
  high: 'perennials-and-groundcover',
};

const ROOTS_OF_TYPE: Readonly<Record<Exclude<PlantTypeId, Turf>, LandscapeRootsId>> = {
  'annual-flowers': 'annual-flowers',
  'woody-and-perennial-humid': 'perennials-and-groundcover',
  'woody-and-perennial-arid': 'perennials-and-groundcover',
  'desert-plants': 'shrubs',
  'trees-shrubs-vines-groundcover': 'perennials-and-groundcover',
  'herbaceous-perennials': 'perennials-and-groundcover',
  'desert-adapted': 'shrubs',
  'annual-flowers-and-bedding': 'annual-flowers',
  'home-fruit-deciduous': 'trees',
  'home-fruit-evergreen': 'trees',
  'home-vegetables': 'perennials-and-groundcover',
};

type Turf = 'turf-cool-season' | 'turf-warm-season';

const isTurf = (type: PlantTypeId): type is Turf => type === 'turf-cool-season' || type === 'turf-warm-season';

export function rootZoneOf(need: PlanNeed, given: PlanRoots & { readonly units: UnitSystem }): RootZone {
  const published = rootsOf(need);
  const depthM = inSi(given.rootDepth, 'rootDepth', given.units) ?? published.depthM;
  const isAnnual = need.kind === 'crop' && isAnnualCrop(need.crop);
  const grows = isAnnual && depthM > DEFAULTS.initialRootDepthM;
  return {
    depthM,
    ...(grows ? { initialDepthM: DEFAULTS.initialRootDepthM } : {}),
    allowedDepletion: given.allowedDepletion ?? published.allowedDepletion,
    adjustsDepletion: need.kind === 'crop',
    targetDepletion: given.target ?? DEFAULTS.target,
    startDepletion: given.startDepletion ?? DEFAULTS.startDepletion,
  };
}

function rootsOf(need: PlanNeed): Roots {
  if (need.kind === 'crop') return cropRoots(need.crop);
  if (need.kind === 'class') return landscapeRoots(ROOTS_OF_CLASS[need.class]);
  return isTurf(need.type) ? cropRoots(need.type) : landscapeRoots(ROOTS_OF_TYPE[need.type]);
}

/** FAO-56 Table 22: its footnote gives the smaller depth for scheduling. */
function cropRoots(crop: Parameters<typeof findCrop>[0]): Roots {
  const { rootDepthM, depletionFraction } = findCrop(crop);
  return { depthM: rootDepthM.min, allowedDepletion: depletionFraction };
}

function landscapeRoots(id: LandscapeRootsId): Roots {
  const row = LANDSCAPE_ROOTS.find((roots) => roots.id === id);
  if (row === undefined) throw new RangeError(`There are no roots for "${id}".`);
  return { depthM: row.rootDepthUsedM, allowedDepletion: row.allowedDepletionUsed };
}
