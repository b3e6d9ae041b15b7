/** Lines that are laid in mid-season wet another share of a planting's ground: the share of a week, and what is in the two stores at its start. */
import type { GardenPlanting } from '../garden.ts';
import type { Stores } from '../soil/two-stores.ts';

export type WettedPlanting = Pick<GardenPlanting, 'container' | 'wettedShare' | 'wettedShareByWeek'>;

/** Of a planting's ground, what its lines wet in a week of the season; all of a container's. */
export function shareIn({ container, wettedShareByWeek, wettedShare = 1 }: WettedPlanting, week: number): number {
  return container === undefined ? (wettedShareByWeek?.[week] ?? wettedShare) : 1;
}

/**
 * What is newly wetted was as dry as the rest; what is no longer wetted keeps what it had. Over all of the ground as much is missing as
 * before. A rule of this kit.
 */
export function wetAnew(stores: Pick<Stores, 'wettedMm' | 'dryMm'>, before: number, now: number): void {
  const { wettedMm, dryMm } = stores;
  if (now > before) stores.wettedMm = (before * wettedMm + (now - before) * dryMm) / now;
  if (now < before) stores.dryMm = ((before - now) * wettedMm + (1 - before) * dryMm) / (1 - now);
  if (now === 1) stores.dryMm = stores.wettedMm;
}
