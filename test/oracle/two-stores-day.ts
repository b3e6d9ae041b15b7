/**
 * A day of ground that lines wet in part: rain falls on all of it, irrigation on the wetted store. Each store gives its share of the day's use
 * from what is readily there, then what the other lacks of it, the wetted one first; what is lacking still comes from both under their stress
 * (FAO-56 eq. 84). No water moves from one to the other. Depths in mm, of a store over its own ground.
 */
import type { NearTies } from './near-ties.ts';
import { type DayBalance, type Depletion, type RootZoneDay, stress } from './root-zone-day.ts';

interface Store {
  readonly share: number;
  readonly startMm: number;
  readonly broughtMm: number;
}

export function twoStoresDay(
  day: RootZoneDay,
  share: number,
  start: Depletion,
  irrigationMm: number,
  ties: NearTies,
): DayBalance {
  const { soakedMm } = day;
  const wetted: Store = { share, startMm: start.wettedMm, broughtMm: soakedMm + irrigationMm / share };
  const dry: Store = { share: 1 - share, startMm: start.dryMm, broughtMm: soakedMm };
  const isBeyond = ({ startMm }: Store) => ties.isClearlyAbove(startMm, day.rawMm);
  const uses = day.isEstablishing ? usesOfWettedAlone(day, wetted) : usesOfBoth(day, [wetted, dry], isBeyond);
  const ends = [wetted, dry].map((store, place) => store.startMm + (uses[place] ?? 0) - store.broughtMm);
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
function usesOfWettedAlone(day: RootZoneDay, { share, startMm, broughtMm }: Store): readonly number[] {
  return [Math.min((stress(day, startMm) * day.etcMm) / share, day.tawMm - startMm + broughtMm), 0];
}

function usesOfBoth(
  day: RootZoneDay,
  stores: readonly Store[],
  isBeyond: (store: Store) => boolean,
): readonly number[] {
  const readily = stores.map((store) => {
    return isBeyond(store) ? 0 : Math.max(0, day.rawMm - store.startMm + store.broughtMm);
  });
  const own = readily.map((mm) => Math.min(day.etcMm, mm));
  let lackMm = stores.reduce((lack, { share }, place) => lack - share * (own[place] ?? 0), day.etcMm);
  const helped = stores.map(({ share }, place) => {
    const mm = own[place] ?? 0;
    const help = Math.min(lackMm, share * ((readily[place] ?? 0) - mm));
    lackMm -= help;
    return mm + help / share;
  });
  return stores.map(({ startMm, broughtMm }, place) => {
    const wanted = (helped[place] ?? 0) + lackMm * stress(day, startMm);
    return Math.min(wanted, day.tawMm - startMm + broughtMm);
  });
}

/** A dry store as it is expected to be, from a morning on: it gives its share while that is readily there. */
export interface ExpectedStoreDay {
  readonly etcMm: number;
  readonly rawMm: number;
  readonly rainMm: number;
  readonly rootedMm: number;
  readonly isEstablishing: boolean;
}

/** What the wetted store is expected to bear on each of some days in a row, over its own ground, from what the dry one lacks on the first morning. */
export function expectedOfWetted(
  days: readonly ExpectedStoreDay[],
  share: number,
  dryMm: number,
  ties: NearTies,
): readonly number[] {
  let depletionMm = dryMm;
  return days.map(({ etcMm, rawMm, rainMm, rootedMm, isEstablishing }, place) => {
    // The first morning has seen its roots grow.
    if (place > 0) depletionMm += rootedMm;
    const readilyMm = ties.isClearlyAbove(depletionMm, rawMm) ? 0 : Math.max(0, rawMm - depletionMm + rainMm);
    const givenMm = isEstablishing ? 0 : Math.min(etcMm, readilyMm);
    depletionMm = Math.max(0, depletionMm + givenMm - rainMm);
    return etcMm + ((1 - share) / share) * (etcMm - givenMm);
  });
}
