/** Which of a planting's depths make each of its volumes: one table for every reader. */
import { PLANTING_FIELDS as P, SUPPLY_FIELDS } from './season.ts';

export type PlantingVolume = keyof typeof SUPPLY_FIELDS;

/** Fields of `PLANTING_FIELDS` that are added up: `~field` is taken off. */
type DepthTerms = readonly number[];

export const VOLUME_DEPTHS: Readonly<Record<PlantingVolume, DepthTerms>> = {
  litres: [P.irrigationGrossMm],
  rainLitres: [P.rainMm],
  demandLitres: [P.demandMm],
  usedLitres: [P.usedMm],
  rainStayedLitres: [P.rainSoakedMm, ~P.rainDrainedMm],
  irrigationStayedLitres: [P.irrigationNetMm, ~P.irrigationDrainedMm],
  drainedLitres: [P.rainDrainedMm, P.irrigationDrainedMm],
  lostLitres: [P.rainMm, P.irrigationGrossMm, ~P.rainSoakedMm, ~P.irrigationNetMm],
  storageLitres: [P.depletionStartMm, P.rootedMm, ~P.depletionEndMm],
  neededLitres: [P.neededMm],
};

/** By index into `SUPPLY_FIELDS`. */
const BY_INDEX: DepthTerms[] = [];
for (const [volume, index] of Object.entries(SUPPLY_FIELDS)) BY_INDEX[index] = VOLUME_DEPTHS[volume as PlantingVolume];

/** What a volume is over the planting's ground, mm; its figures of the week begin at `start`. */
export function volumeDepthMm(figures: Float64Array, start: number, terms: DepthTerms): number {
  let mm = 0;
  for (let at = 0; at < terms.length; at++) {
    const term = terms[at] as number;
    mm += term < 0 ? -(figures[start + ~term] as number) : (figures[start + term] as number);
  }
  return mm;
}

/** Adds all volumes of a planting's week to those of its zone, litres: where each begin in the same figures. */
export function addVolumes(figures: Float64Array, zoneAt: number, plantingAt: number, areaM2: number): void {
  for (let at = 0; at < BY_INDEX.length; at++) {
    (figures[zoneAt + at] as number) += areaM2 * volumeDepthMm(figures, plantingAt, BY_INDEX[at] as DepthTerms);
  }
}
