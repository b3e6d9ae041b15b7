/**
 * A day of ground that lines wet in part: rain falls on all of it, irrigation on the wetted store, both before the day's use. Then each store gives its
 * share of the use from what is readily there, then what the other lacks of it, the wetted one first; what is lacking still comes from both
 * under their stress (FAO-56 eq. 84), as it was before they gave any. No water moves from one to the other. Depths in mm, of a store over its own ground.
 */
import { type DayBalance, type Depletion, onceWatered, type RootZoneDay, stress } from './root-zone-day.ts';

interface Store {
  readonly share: number;
  /** Missing once what the day brings has come; under 0 where that is too much. */
  readonly wateredMm: number;
}

export function twoStoresDay(day: RootZoneDay, share: number, start: Depletion, irrigationMm: number): DayBalance {
  const { soakedMm } = day;
  const watered = onceWatered(soakedMm, share, start, irrigationMm);
  const wetted: Store = { share, wateredMm: watered.wettedMm };
  const dry: Store = { share: 1 - share, wateredMm: watered.dryMm };
  const uses = day.isEstablishing ? usesOfWettedAlone(day, wetted) : usesOfBoth(day, [wetted, dry]);
  const ends = [wetted, dry].map(({ wateredMm }, place) => wateredMm + (uses[place] ?? 0));
  const drained = [wetted, dry].map((store, place) => {
    const drainedMm = Math.max(0, -(ends[place] ?? 0));
    const rainMm = Math.min(soakedMm, drainedMm);
    return { rainMm: store.share * rainMm, irrigationMm: store.share * (drainedMm - rainMm) };
  });
  const rainDrainedMm = drained.reduce((sum, { rainMm }) => sum + rainMm, 0);
  const irrigationDrainedMm = drained.reduce((sum, each) => sum + each.irrigationMm, 0);
  const [ofWetted = 0, ofDry = 0] = uses;
  return {
    end: { wettedMm: Math.max(0, ends[0] ?? 0), dryMm: Math.max(0, ends[1] ?? 0) },
    usedMm: share * ofWetted + (1 - share) * ofDry,
    drainedMm: rainDrainedMm + irrigationDrainedMm,
    rainDrainedMm,
    irrigationDrainedMm,
    askedOfWettedMm: (day.etcMm - (1 - share) * ofDry) / share,
  };
}

/** All of the day's use, from a store that knows nothing of the other. */
function usesOfWettedAlone(day: RootZoneDay, { share, wateredMm }: Store): readonly number[] {
  return [Math.min((stress(day, wateredMm) * day.etcMm) / share, day.tawMm - wateredMm), 0];
}

function usesOfBoth(day: RootZoneDay, stores: readonly Store[]): readonly number[] {
  const readily = stores.map(({ wateredMm }) => Math.max(0, day.rawMm - wateredMm));
  const own = readily.map((mm) => Math.min(day.etcMm, mm));
  let lackMm = stores.reduce((lack, { share }, place) => lack - share * (own[place] ?? 0), day.etcMm);
  const helped = stores.map(({ share }, place) => {
    const mm = own[place] ?? 0;
    const help = Math.min(lackMm, share * ((readily[place] ?? 0) - mm));
    lackMm -= help;
    return mm + help / share;
  });
  return stores.map(({ wateredMm }, place) => {
    const wanted = (helped[place] ?? 0) + lackMm * stress(day, wateredMm);
    return Math.min(wanted, day.tawMm - wateredMm);
  });
}

/** A dry store as it is expected to be, from a morning on: it gives its share while that is readily there, the day's rain with it. */
export interface ExpectedStoreDay {
  readonly etcMm: number;
  readonly rawMm: number;
  readonly rainMm: number;
  readonly rootedMm: number;
  readonly isEstablishing: boolean;
}

/** What the wetted store is expected to bear on each of some days in a row, over its own ground, from what the dry one lacks on the first morning. */
export function expectedOfWetted(days: readonly ExpectedStoreDay[], share: number, dryMm: number): readonly number[] {
  let depletionMm = dryMm;
  return days.map(({ etcMm, rawMm, rainMm, rootedMm, isEstablishing }, place) => {
    // The first morning has seen its roots grow.
    if (place > 0) depletionMm += rootedMm;
    const wateredMm = depletionMm - rainMm;
    const givenMm = isEstablishing ? 0 : Math.min(etcMm, Math.max(0, rawMm - wateredMm));
    depletionMm = Math.max(0, wateredMm + givenMm);
    return etcMm + ((1 - share) / share) * (etcMm - givenMm);
  });
}
