/**
 * A day of a pot, in as many equal parts as it is watered: water comes first and what it cannot hold drains (FAO-56 Example 38), then the
 * plants use it. It may lose all that it holds in a day, so eq. 84 is solved over the part instead of taken from its start. Depths in mm.
 */
import type { DayBalance, Irrigation, RootZoneDay } from './root-zone-day.ts';

export function potDay(day: RootZoneDay, startMm: number, { irrigationMm, runs }: Irrigation): DayBalance {
  const sums = { depletionMm: startMm, usedMm: 0, rainDrainedMm: 0, irrigationDrainedMm: 0 };
  for (let part = 0; part < runs; part++) {
    const rainMm = day.soakedMm / runs;
    const levelMm = sums.depletionMm - rainMm - irrigationMm / runs;
    const drainedMm = Math.max(0, -levelMm);
    const wateredMm = Math.max(0, levelMm);
    const usedMm = usedBy(day, day.etcMm / runs, wateredMm);
    sums.usedMm += usedMm;
    sums.rainDrainedMm += Math.min(rainMm, drainedMm);
    sums.irrigationDrainedMm += drainedMm - Math.min(rainMm, drainedMm);
    sums.depletionMm = wateredMm + usedMm;
  }
  const { depletionMm, ...rest } = sums;
  return {
    ...rest,
    end: { wettedMm: depletionMm, dryMm: depletionMm },
    drainedMm: rest.rainDrainedMm + rest.irrigationDrainedMm,
    askedOfWettedMm: day.etcMm,
  };
}

/**
 * Up to what is readily there, all that is wanted; beyond it the stress grows with each drop: dD = Ks dE, Ks = (TAW - D) / (TAW - RAW).
 */
function usedBy({ tawMm, rawMm }: RootZoneDay, wantedMm: number, depletionMm: number): number {
  const easyMm = Math.min(wantedMm, Math.max(0, rawMm - depletionMm));
  const fromMm = Math.max(depletionMm, rawMm);
  return easyMm + (tawMm - fromMm) * (1 - Math.exp(-(wantedMm - easyMm) / (tawMm - rawMm)));
}
