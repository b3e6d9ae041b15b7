/** What a day of the root zone is given, and what comes of it. Depths in mm: of a store over its own ground, of a planting over all of its ground. */
export interface RootZoneDay {
  readonly etcMm: number;
  /** Total available water of the day. */
  readonly tawMm: number;
  /** Readily available water of the day. */
  readonly rawMm: number;
  /** Rain that enters the soil. */
  readonly soakedMm: number;
  /** While it is establishing a plant has the wetted store alone. */
  readonly isEstablishing: boolean;
}

/** Missing water, each over its own ground; where there is one store both are the same. */
export interface Depletion {
  readonly wettedMm: number;
  readonly dryMm: number;
}

/** What of its ground is wetted, and whether that is a pot. */
export interface Stores {
  /** Above 0 to 1. */
  readonly share: number;
  readonly isPot: boolean;
}

export interface Irrigation {
  /** Over all of the ground. */
  readonly irrigationMm: number;
  /** Equal runs of the day; only pots are told apart by it. */
  readonly runs: number;
  /** Of each run, the part that is to wash salt away: it passes straight through. Left out: 0. */
  readonly leachingFraction?: number;
}

/** What of the irrigation comes to where the roots drink, over all of the ground. */
export function enteringMm({ irrigationMm, leachingFraction = 0 }: Omit<Irrigation, 'runs'>): number {
  return (1 - leachingFraction) * irrigationMm;
}

export interface DayBalance {
  readonly end: Depletion;
  readonly usedMm: number;
  readonly drainedMm: number;
  /** What drains is the rain's first, then the irrigation's. */
  readonly rainDrainedMm: number;
  readonly irrigationDrainedMm: number;
  /** What the plants would have had from the wetted store if they were never short, over wetted ground. */
  readonly askedOfWettedMm: number;
}

/**
 * Missing water once what the day brings has come, before its use: Example 38 (p. 172) has rain and irrigation early in the day. Rain falls on all of the
 * ground, irrigation on the wetted part. Under 0 where more comes than was missing.
 */
export function onceWatered(
  soakedMm: number,
  share: number,
  { wettedMm, dryMm }: Depletion,
  irrigationMm: number,
): Depletion {
  return { wettedMm: wettedMm - soakedMm - irrigationMm / share, dryMm: dryMm - soakedMm };
}

/** FAO-56 eq. 84, from the depletion with which the day's use begins. */
export function stress({ tawMm, rawMm }: Pick<RootZoneDay, 'tawMm' | 'rawMm'>, depletionMm: number): number {
  return depletionMm > rawMm ? (tawMm - depletionMm) / (tawMm - rawMm) : 1;
}
