/** Pots, boxes and baskets: what their mix holds, and what of the rain reaches it. */
import type { GardenContainer, RootZone } from '../../engine/garden.ts';
import { POTTING_MIXES } from '../../engine/soil/potting-mixes.data.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { DEFAULTS } from '../defaults.ts';
import type { PlanPlanting } from '../schema/plan-schema.ts';
import { inSi } from './in-si.ts';

type PlanContainer = NonNullable<PlanPlanting['container']>;

interface ContainerContext {
  readonly units: UnitSystem;
  readonly plants: number | undefined;
}

export function containerOf(container: PlanContainer, { units, plants }: ContainerContext): GardenContainer {
  const volumeLitres = inSi(container.volume, 'volume', units);
  return {
    count: container.count ?? plants ?? 1,
    volumeLitres,
    mix: container.availableWater === undefined ? (container.mix ?? DEFAULTS.mix) : undefined,
    openingM: inSi(container.opening, 'diameter', units) ?? asWideAsTallM(volumeLitres),
    rainShare: container.rainShare ?? DEFAULTS.containerRainShare,
  };
}

const LITRES_PER_M3 = 1000;

/** Across a round pot as wide as it is tall: assumption of this kit. */
function asWideAsTallM(volumeLitres: number): number {
  return Math.cbrt((4 * volumeLitres) / LITRES_PER_M3 / Math.PI);
}

/** The mix of all containers as if it lay under the canopy, so deep. */
export function mixDepthM({ count, volumeLitres }: GardenContainer, areaM2: number): number {
  return (count * volumeLitres) / LITRES_PER_M3 / areaM2;
}

function mixAvailableWater({ mix, availableWater }: PlanContainer): number {
  const row = POTTING_MIXES.find(({ id }) => id === (mix ?? DEFAULTS.mix));
  if (row === undefined) throw new RangeError(`There is no potting mix "${mix}".`);
  return availableWater ?? row.availableWater;
}

/** Rain that reaches all containers, over the canopy's ground. */
export function rainFactorOf({ count, openingM, rainShare }: GardenContainer, areaM2: number): number {
  return (count * Math.PI * openingM ** 2 * rainShare) / 4 / areaM2;
}

/** What a planting in containers says of its root zone; what it leaves out is that of containers, not of its kind. */
export function containerRoots(
  container: PlanContainer,
  given: Pick<PlanPlanting, 'allowedDepletion' | 'target' | 'startDepletion'>,
  depthM: number,
): RootZone {
  return {
    depthM,
    availableWater: mixAvailableWater(container),
    allowedDepletion: given.allowedDepletion ?? DEFAULTS.containerAllowedDepletion,
    adjustsDepletion: false,
    targetDepletion: given.target ?? 0,
    startDepletion: given.startDepletion ?? DEFAULTS.startDepletion,
  };
}
