/**
 * The ground of a planting as two stores: what its lines wet at the depth of its roots, and the rest. Rain falls on both, irrigation on
 * the wetted one alone. Each has its own depletion, mm over its own ground; nothing moves from one to the other.
 */
import { positivePart } from '../number-only.ts';
import { isShort, usedWaterMm } from './root-zone-day.ts';

/** Before and after a day; what the day brought is mm over all of the planting. */
export interface Stores {
  wettedMm: number;
  dryMm: number;
  usedMm: number;
  /** Of water after what the day brought, wherever the roots draw on; of a container: it could not give all that was asked for. */
  isShort: boolean;
  /** What the wetted ground had to give of the day's demand, mm over the wetted ground. */
  askedOfWettedMm: number;
  /** Of two stores: what each gave, mm over its own ground. */
  fromWettedMm: number;
  fromDryMm: number;
  rainDrainedMm: number;
  irrigationDrainedMm: number;
}

export function storesOf(wettedMm: number, dryMm: number): Stores {
  return {
    wettedMm,
    dryMm,
    usedMm: 0,
    isShort: false,
    askedOfWettedMm: 0,
    fromWettedMm: 0,
    fromDryMm: 0,
    rainDrainedMm: 0,
    irrigationDrainedMm: 0,
  };
}

export interface StoresDay {
  /** Wetted share of the ground, above 0 to 1: then there is one store. */
  readonly share: number;
  readonly etcMm: number;
  readonly rawMm: number;
  readonly tawMm: number;
  /** Rain that enters the soil. */
  readonly soakedMm: number;
  /** Net irrigation, mm over all of the planting. */
  readonly irrigationMm: number;
  /** Its roots are in the wetted ground alone: it is establishing. */
  readonly isWettedAlone: boolean;
}

/**
 * One day. What it brings comes first. Each store gives its share of the demand while its readily available water lasts, what is lacking
 * comes from the other's, and what neither has comes from each by its share under stress (FAO-56 eq. 84). With both equally dry and no
 * irrigation it is the day of one store, and so it is with a share of 1.
 *
 * Source: the balance of each is FAO-56 eq. 84 to 88 in the order of its Example 38 (p. 172); how they share the demand is a rule of this
 * kit.
 */
export function runStores(stores: Stores, day: StoresDay): void {
  const { share, etcMm, rawMm, tawMm, soakedMm, irrigationMm, isWettedAlone } = day;
  const rest = 1 - share;
  const wettedMm = stores.wettedMm - soakedMm - irrigationMm / share;
  const dryMm = stores.dryMm - soakedMm;
  const isAlone = isWettedAlone || share === 1;
  stores.isShort = isShort(wettedMm, rawMm) && (isAlone || isShort(dryMm, rawMm));
  let ofWetted = 0;
  let ofDry = 0;
  let lacking = etcMm / share;
  if (!isAlone) {
    const readyDry = readyMm(dryMm, rawMm);
    ofWetted = readilyOfWettedMm(share, etcMm, readyMm(wettedMm, rawMm), readyDry);
    ofDry = readilyOfDryMm(share, etcMm, ofWetted, readyDry);
    lacking = etcMm - share * ofWetted - rest * ofDry;
  }
  if (lacking > 0) {
    ofWetted = usedWaterMm(lacking, wettedMm, rawMm, tawMm, ofWetted);
    if (!isAlone) ofDry = usedWaterMm(lacking, dryMm, rawMm, tawMm, ofDry);
  }
  stores.fromWettedMm = ofWetted;
  stores.fromDryMm = ofDry;
  const wettedEnd = wettedMm + ofWetted;
  const dryEnd = dryMm + ofDry;
  stores.wettedMm = Math.max(0, wettedEnd);
  stores.dryMm = share === 1 ? stores.wettedMm : Math.max(0, dryEnd);
  stores.usedMm = share * ofWetted + rest * ofDry;
  stores.askedOfWettedMm = (etcMm - rest * ofDry) / share;
  // Rain drains first.
  stores.rainDrainedMm = share * Math.min(soakedMm, Math.max(0, -wettedEnd)) + rest * Math.max(0, -dryEnd);
  stores.irrigationDrainedMm = share * Math.max(0, -wettedEnd - soakedMm);
}

/** Use of the wetted ground's readily available water, mm over it: its share of the demand, and what the rest's cannot give of its own. */
export function readilyOfWettedMm(share: number, etcMm: number, readyMm: number, readyDryMm: number): number {
  return Math.min(readyMm, (etcMm - (1 - share) * Math.min(etcMm, readyDryMm)) / share);
}

/** The same of the rest, mm over it. */
export function readilyOfDryMm(share: number, etcMm: number, ofWettedMm: number, readyMm: number): number {
  return Math.min(readyMm, (etcMm - share * ofWettedMm) / (1 - share));
}

/** Readily available water of a day, mm; `depletionMm`: after what the day brought, may be below 0. */
export function readyMm(depletionMm: number, rawMm: number): number {
  return positivePart(rawMm - depletionMm);
}

/** What the wetted ground is to give of a day's demand of which the rest gives so much, mm over the wetted ground. */
export function drawnMm(share: number, etcMm: number, ofDryMm: number): number {
  return etcMm + ((1 - share) / share) * (etcMm - ofDryMm);
}
