/** What is taken where a plan leaves a value out: every default of the kit, each with its reason, in SI. */
import { EMITTER_EXPONENTS } from '../engine/line/emitter.ts';
import { DRIPLINE_DIAMETER_MM, SOLID_DIAMETER_MM } from '../engine/line/tubing.data.ts';
import { LEAST_PRESSURE_KPA } from '../engine/line/usual-pressures.data.ts';

export const DEFAULTS = {
  /** Common practice, no source. */
  timerStepMinutes: 1,
  /** Start times that a program of a usual garden timer has: common practice, no source. */
  startsADay: 4,
  /** A mixed planting takes the factor of its thirstiest plants: Kjelgren, Beeson, Pittenger and Montague (2016); from memory. */
  rule: { kind: 'thirstiest' },

  slopePercent: 0,
  /** What each planting's own daily balance keeps: FAO-56 eq. 85 to 88. */
  rainMethod: 'balance',
  /** At most a quarter of the rain may count: California Code of Regulations, Title 23, s. 492 ff. (2015). */
  rainFraction: 0.25,
  /** Runoff may be taken as none: FAO-56 p. 170. */
  runoffFraction: 0,

  /** Average density and microclimate: Costello, Matheny and Clark (2000). */
  density: 1,
  microclimate: 1,
  /**
   * Room that watering leaves for rain, as a share of the readily available water: rule of this kit. Over four years of New York's
   * days it takes about a third less irrigation than filling up, and leaves plants no drier.
   */
  target: 0.3,
  /** A season that starts in spring finds the soil filled by winter: assumption of this kit, after FAO-56 eq. 87. */
  startDepletion: 0,

  /** Between rows of vegetables, 18 in: common practice, no source. */
  rowsApartM: 18 * 0.0254,
  /** The middle of the published range. */
  mix: 'potting',
  /** Nothing hangs over it. */
  containerRainShare: 1,
  /** Half of what the mix holds: common practice, no source. */
  containerAllowedDepletion: 0.5,
  /** Roots of an annual in its first stage, m: FAO-56 ch. 8 has 0.15 to 0.20, the careful end; from memory. */
  initialRootDepthM: 0.15,
  /** All of the ground: assumption of this kit. */
  mulchCover: 1,
  /** One foot of root radius for each inch of trunk: common practice, no source. */
  groundPerTrunk: 24,

  topology: 'dead-end',
  slopeSide: 'level',
  riseMPerM: 0,
  insideDiameterMm: DRIPLINE_DIAMETER_MM,
  /** Half-inch tubing: `solid-half-inch` of the catalogue. */
  solidInsideDiameterMm: SOLID_DIAMETER_MM,
  emitter: 'compensating',
  leastPressureKpa: LEAST_PRESSURE_KPA,
  /** For a plain emitter the plan gives its own; a compensating one is taken as turbulent below its least pressure. */
  exponent: EMITTER_EXPONENTS.turbulent,

  /** Every day, all day. */
  windowWeekdays: 0b111_1111,
  windowHoursPerDay: 24,
  /** Of an open bucket's flow, what is planned on: common practice, no source (75 to 80 %). */
  bucketShare: 0.8,
  roofAreaM2: 0,
  /** Asphalt shingle, 0.90; metal 0.95, tar and gravel 0.80 (trade tables, as reprinted; from memory). */
  runoffCoefficient: 0.9,
} as const;
