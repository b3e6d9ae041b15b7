/** One day of the root zone: FAO-56 eq. 85 with the stress of eq. 84. Depths in mm. */
import type { PlantingDay } from './planting-facts.ts';

export interface DayBalance {
  readonly endMm: number;
  readonly usedMm: number;
  readonly drainedMm: number;
  readonly irrigationDrainedMm: number;
}

/** The day as it happens: a dry root zone gives less, and what field capacity cannot hold drains, irrigation first. */
export function realDay(day: PlantingDay, tawMm: number, depletionMm: number, irrigationMm: number): DayBalance {
  const stress = depletionMm > day.rawMm ? (tawMm - depletionMm) / (tawMm - day.rawMm) : 1;
  const there = tawMm - depletionMm + day.soakedMm + irrigationMm;
  const usedMm = Math.min(stress * day.etcMm, there);
  const balance = depletionMm + usedMm - day.soakedMm - irrigationMm;
  const drainedMm = Math.max(0, -balance);
  return {
    endMm: Math.max(0, balance),
    usedMm,
    drainedMm,
    irrigationDrainedMm: Math.min(irrigationMm, drainedMm),
  };
}

/** The day's change of depletion if the plants were never short and the soil held any amount. */
export function fullDemandChange(day: PlantingDay, irrigationMm: number): number {
  return day.etcMm - day.soakedMm - irrigationMm;
}
