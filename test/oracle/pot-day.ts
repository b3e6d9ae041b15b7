/**
 * A day of a pot, in as many equal parts as it is watered: irrigation comes first and what passes the brim drains (FAO-56 Example 38); then rain
 * falls while the plants use water, and what is over the brim at the end drains (eq. 85 and 88). It may lose all that it holds in a day, so
 * eq. 84 is solved over the part instead of taken from its start. Depths in mm.
 */
import type { DayBalance, Irrigation, RootZoneDay } from './root-zone-day.ts';

export function potDay(day: RootZoneDay, startMm: number, { irrigationMm, runs }: Irrigation): DayBalance {
  let depletionMm = startMm;
  let usedMm = 0;
  let rainDrainedMm = 0;
  let irrigationDrainedMm = 0;
  for (let part = 0; part < runs; part++) {
    const irrigatedMm = depletionMm - irrigationMm / runs;
    irrigationDrainedMm += Math.max(0, -irrigatedMm);
    // Under 0 while more rain is there than the mix holds.
    const levelMm = Math.max(0, irrigatedMm) - day.soakedMm / runs;
    const usedInPartMm = usedBy(day, day.etcMm / runs, Math.max(0, levelMm));
    usedMm += usedInPartMm;
    rainDrainedMm += Math.max(0, -(levelMm + usedInPartMm));
    depletionMm = Math.max(0, levelMm + usedInPartMm);
  }
  return {
    end: { wettedMm: depletionMm, dryMm: depletionMm },
    usedMm,
    drainedMm: rainDrainedMm + irrigationDrainedMm,
    rainDrainedMm,
    irrigationDrainedMm,
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
