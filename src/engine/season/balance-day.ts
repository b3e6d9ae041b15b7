/** A planting's day through the balance: one store, two where its lines wet a part of its ground, or the mix of its containers. */
import { type ContainerDay, runContainer } from '../soil/container-day.ts';
import { runStores, type Stores, type StoresDay } from '../soil/two-stores.ts';
import { isWettedAlone, type PlantingDemand, tawOn } from './planting-demand.ts';

export interface BalanceGround {
  readonly demand: Pick<PlantingDemand, 'share' | 'isInContainer' | 'targetFrom' | 'tawMm' | 'tawByDayMm' | 'rootedMm'>;
  readonly stores: Stores;
}

type EveryDay = StoresDay & ContainerDay;

/** What a day asks and brings, mm over all of the planting; filled anew for each, so that many days make no litter. */
export type BalanceDay = { -readonly [Field in keyof EveryDay]: EveryDay[Field] };

export function balanceDay(): BalanceDay {
  return { share: 1, isWettedAlone: false, parts: 1, etcMm: 0, rawMm: 0, tawMm: 0, soakedMm: 0, irrigationMm: 0 };
}

/** Roots reach new soil first. */
export function growRoots({ demand, stores }: BalanceGround, day: number): void {
  if (demand.rootedMm === undefined) return;
  stores.wettedMm += demand.rootedMm[day] as number;
  stores.dryMm += demand.rootedMm[day] as number;
}

/** The day's own figures are in `given`; the rest is filled in here. */
export function runBalance({ demand, stores }: BalanceGround, day: number, given: BalanceDay): void {
  given.tawMm = tawOn(demand, day);
  given.isWettedAlone = isWettedAlone(demand, day);
  if (demand.isInContainer) runContainer(stores, given);
  else runStores(stores, given);
}
