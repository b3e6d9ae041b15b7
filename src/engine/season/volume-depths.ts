/** Which of a planting's depths make each of its volumes: one table for every reader. */
import { PLANTING_FIELDS as P, SUPPLY_FIELDS } from './season.ts';

export type PlantingVolume = keyof typeof SUPPLY_FIELDS;

/** Fields of `PLANTING_FIELDS` that are added up, and those that are taken off. */
type DepthTerms = readonly [added: readonly number[], takenOff: readonly number[]];

export const VOLUME_DEPTHS: Readonly<Record<PlantingVolume, DepthTerms>> = {
  litres: [[P.irrigationGrossMm], []],
  rainLitres: [[P.rainMm], []],
  demandLitres: [[P.demandMm], []],
  usedLitres: [[P.usedMm], []],
  rainStayedLitres: [[P.rainSoakedMm], [P.rainDrainedMm]],
  irrigationStayedLitres: [[P.irrigationNetMm], [P.irrigationDrainedMm]],
  drainedLitres: [[P.rainDrainedMm, P.irrigationDrainedMm], []],
  lostLitres: [
    [P.rainMm, P.irrigationGrossMm],
    [P.rainSoakedMm, P.irrigationNetMm],
  ],
  storageLitres: [[P.depletionStartMm, P.rootedMm], [P.depletionEndMm]],
  neededLitres: [[P.neededMm], []],
};

const BY_INDEX = Object.entries(VOLUME_DEPTHS).map(
  ([volume, terms]) => [SUPPLY_FIELDS[volume as PlantingVolume], terms] as const,
);

/** What a volume is over the planting's ground, mm; its figures of the week begin at `start`. */
export function volumeDepthMm(figures: ArrayLike<number>, start: number, [added, takenOff]: DepthTerms): number {
  let mm = 0;
  for (const field of added) mm += figures[start + field] as number;
  for (const field of takenOff) mm -= figures[start + field] as number;
  return mm;
}

/** Adds all volumes of a planting's week to those of its zone, litres: where each begin in the same figures. */
export function addVolumes(figures: Float64Array, zoneAt: number, plantingAt: number, areaM2: number): void {
  for (const [index, terms] of BY_INDEX) {
    (figures[zoneAt + index] as number) += areaM2 * volumeDepthMm(figures, plantingAt, terms);
  }
}
