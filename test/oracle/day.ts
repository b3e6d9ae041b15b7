/**
 * One day of the root zone: FAO-56 eq. 85 with the stress of eq. 84. What the day brings comes before its use; what is too much drains after it. Depths in mm: of a store over its own ground, of a planting over all of its
 * ground. Where lines wet a part of the ground there are two stores of one depth, the wetted one and the rest.
 */
import type { NearTies } from './near-ties.ts';
import { potDay } from './pot-day.ts';
import type { DayBalance, Depletion, Irrigation, RootZoneDay, Stores } from './root-zone-day.ts';
import { enteringMm, onceWatered, stress } from './root-zone-day.ts';
import { twoStoresDay } from './two-stores-day.ts';

/** Missing water over all of the ground. */
export function overAll({ share }: Stores, { wettedMm, dryMm }: Depletion): number {
  return share * wettedMm + (1 - share) * dryMm;
}

/**
 * As it is once another share of the ground is wetted: what is newly wetted was dry ground, what is no longer wetted keeps what it had. Over all of
 * the ground as much is missing as before.
 */
export function wettedAnew({ wettedMm, dryMm }: Depletion, before: number, now: number): Depletion {
  if (now > before) {
    const mixedMm = (before * wettedMm + (now - before) * dryMm) / now;
    return { wettedMm: mixedMm, dryMm: now === 1 ? mixedMm : dryMm };
  }
  if (now === before) return { wettedMm, dryMm };
  const leftMm = before === 1 ? wettedMm : ((before - now) * wettedMm + (1 - before) * dryMm) / (1 - now);
  return { wettedMm, dryMm: leftMm };
}

/** With what the new soil lacks that the roots reach in the morning. */
export function rooted({ wettedMm, dryMm }: Depletion, rootedMm: number): Depletion {
  return { wettedMm: wettedMm + rootedMm, dryMm: dryMm + rootedMm };
}

/**
 * The day as it happens: a dry root zone gives less, and what field capacity cannot hold drains. Water that is to wash salt away drains however dry the
 * soil is: a leaching fraction is the part of the water applied that passes through the root zone (FAO-29 ch. 2, from memory).
 */
export function realDay(day: RootZoneDay, stores: Stores, start: Depletion, irrigation: Irrigation): DayBalance {
  const { irrigationMm, leachingFraction = 0, runs } = irrigation;
  const passedMm = leachingFraction * irrigationMm;
  const balance = balanceOf(day, stores, start, { irrigationMm: enteringMm(irrigation), runs });
  return {
    ...balance,
    drainedMm: balance.drainedMm + passedMm,
    irrigationDrainedMm: balance.irrigationDrainedMm + passedMm,
  };
}

/** Of what enters the soil, or the mix of a pot. */
function balanceOf(day: RootZoneDay, stores: Stores, start: Depletion, entering: Irrigation): DayBalance {
  if (stores.isPot) return potDay(day, start.wettedMm, entering);
  if (stores.share < 1) return twoStoresDay(day, stores.share, start, entering.irrigationMm);
  return oneStoreDay(day, start.wettedMm, entering.irrigationMm);
}

function oneStoreDay(day: RootZoneDay, startMm: number, irrigationMm: number): DayBalance {
  const { etcMm, tawMm, soakedMm } = day;
  const wateredMm = startMm - soakedMm - irrigationMm;
  const usedMm = Math.min(stress(day, wateredMm) * etcMm, tawMm - wateredMm);
  const balance = wateredMm + usedMm;
  const endMm = Math.max(0, balance);
  const drainedMm = Math.max(0, -balance);
  const rainDrainedMm = Math.min(soakedMm, drainedMm);
  return {
    end: { wettedMm: endMm, dryMm: endMm },
    usedMm,
    drainedMm,
    rainDrainedMm,
    irrigationDrainedMm: drainedMm - rainDrainedMm,
    askedOfWettedMm: etcMm,
  };
}

interface DayGone extends Pick<DayBalance, 'usedMm'> {
  readonly start: Depletion;
  /** Irrigation that came to where they drink, over all of the ground. */
  readonly enteringMm: number;
}

/**
 * Whether its plants were short on a day: with all that it brought there was nothing readily there in any store they have; in a pot, they got less than
 * they wanted.
 */
export function isShortOn(
  day: RootZoneDay,
  { share, isPot }: Stores,
  { start, enteringMm: broughtMm, usedMm }: DayGone,
  ties: NearTies,
): boolean {
  if (isPot) return ties.isClearlyAbove(day.etcMm - usedMm, 0);
  const isBeyond = (mm: number) => ties.isClearlyAbove(mm, day.rawMm);
  const hasOther = share < 1 && !day.isEstablishing;
  const { wettedMm, dryMm } = onceWatered(day.soakedMm, share, start, broughtMm);
  return isBeyond(wettedMm) && (!hasOther || isBeyond(dryMm));
}
