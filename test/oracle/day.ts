/** One day of the root zone: FAO-56 eq. 85 with the stress of eq. 84. Depths in mm. */
export interface RootZoneDay {
  readonly etcMm: number;
  /** Readily available water of the day. */
  readonly rawMm: number;
  /** Rain that enters the soil. */
  readonly soakedMm: number;
}

export interface DayBalance {
  readonly endMm: number;
  readonly usedMm: number;
  readonly drainedMm: number;
  /** What drains is the rain's first, then the irrigation's. */
  readonly rainDrainedMm: number;
  readonly irrigationDrainedMm: number;
}

/** The day as it happens: a dry root zone gives less, and what field capacity cannot hold drains. */
export function realDay(day: RootZoneDay, tawMm: number, depletionMm: number, irrigationMm: number): DayBalance {
  const stress = depletionMm > day.rawMm ? (tawMm - depletionMm) / (tawMm - day.rawMm) : 1;
  const there = tawMm - depletionMm + day.soakedMm + irrigationMm;
  const usedMm = Math.min(stress * day.etcMm, there);
  const balance = depletionMm + usedMm - day.soakedMm - irrigationMm;
  const drainedMm = Math.max(0, -balance);
  const rainDrainedMm = Math.min(day.soakedMm, drainedMm);
  return {
    endMm: Math.max(0, balance),
    usedMm,
    drainedMm,
    rainDrainedMm,
    irrigationDrainedMm: drainedMm - rainDrainedMm,
  };
}
