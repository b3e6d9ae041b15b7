/** A day of a container: its mix holds so little that a day is run in as many parts as it is watered. */
import { positivePart } from '../number-only.ts';
import { isShort } from './root-zone-day.ts';
import type { Stores } from './two-stores.ts';

export interface ContainerDay {
  /** Equal parts of the day, 1 or more: one to a run. */
  readonly parts: number;
  readonly etcMm: number;
  readonly rawMm: number;
  readonly tawMm: number;
  /** Rain that gets in. */
  readonly soakedMm: number;
  readonly irrigationMm: number;
}

/**
 * In each part its irrigation comes first, and what the mix cannot hold drains; then rain falls while the plants use theirs: all that they
 * ask of the readily available water, and of the rest as much as eq. 84 gives if it is followed through the part, so that the last of it
 * is never reached. Of the rain, what is over the brim at the part's end drains. mm over the ground under the canopy; `wettedMm` is the
 * depletion.
 *
 * Source: FAO-56 eq. 84 to 88; irrigation before use as in its Example 38 (p. 172), rain against the day's use as in its eq. 85 and 88.
 */
export function runContainer(stores: Stores, day: ContainerDay): void {
  const { parts, rawMm, tawMm } = day;
  const etcMm = day.etcMm / parts;
  const rainMm = day.soakedMm / parts;
  const irrigationMm = day.irrigationMm / parts;
  let depletionMm = stores.wettedMm;
  let usedMm = 0;
  let rainDrainedMm = 0;
  let irrigationDrainedMm = 0;
  for (let part = 0; part < parts; part++) {
    irrigationDrainedMm += positivePart(irrigationMm - depletionMm);
    const levelMm = positivePart(depletionMm - irrigationMm) - rainMm;
    const used = usedOfPartMm(etcMm, positivePart(levelMm), rawMm, tawMm);
    usedMm += used;
    rainDrainedMm += positivePart(-levelMm - used);
    depletionMm = positivePart(levelMm + used);
  }
  stores.wettedMm = depletionMm;
  stores.dryMm = depletionMm;
  stores.usedMm = usedMm;
  // Of its mix: it gave less than was asked for.
  stores.isShort = isShort(day.etcMm, usedMm);
  stores.askedOfWettedMm = day.etcMm;
  stores.rainDrainedMm = rainDrainedMm;
  stores.irrigationDrainedMm = irrigationDrainedMm;
}

/** Use of a span of time that asks for `etcMm` without stress, mm: d Dr / dt = Ks ETc, solved. */
export function usedOfPartMm(etcMm: number, depletionMm: number, rawMm: number, tawMm: number): number {
  const readily = Math.min(etcMm, Math.max(0, rawMm - depletionMm));
  const left = etcMm - readily;
  if (left === 0) return readily;
  return readily + (tawMm - Math.max(depletionMm, rawMm)) * (1 - Math.exp(-left / (tawMm - rawMm)));
}
