/**
 * What handbooks, extension services and a state print of lines, pipes and barrels, beside what the kit gives for the same. Each group
 * says where it was printed and how far it can be trusted: seen (read there, or in a stored copy), from memory, common practice (no source).
 */
import { applicationRateMmPerHour } from '../../../src/engine/application/application-rate.ts';
import { netMmPerMinute, runMinutes } from '../../../src/engine/application/run-time.ts';
import { emitterFlowLph } from '../../../src/engine/line/emitter.ts';
import { frictionCoefficient, frictionLossKpa } from '../../../src/engine/line/friction.ts';
import { lateral } from '../../../src/engine/line/lateral.ts';
import { NOMINAL_PRESSURE_KPA } from '../../../src/engine/line/usual-pressures.data.ts';
import { velocityMs } from '../../../src/engine/line/velocity.ts';
import { plantingWeek } from '../../../src/engine/season/planting-week.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import { totalAvailableWaterMm } from '../../../src/engine/soil/available-water.ts';
import { findTexture } from '../../../src/engine/soil/find-texture.ts';
import { roofYieldL } from '../../../src/engine/supply/roof-yield.ts';
import { fromSi, toSi } from '../../../src/engine/units.ts';
import { gardenOf } from '../../../src/plan/garden-of.ts';
import type { PlanLine } from '../../../src/plan/schema/plan-schema.ts';
import { oneBed, tomatoes, zone } from '../../support/small-plans.ts';

export interface PrintedGroup {
  readonly what: string;
  readonly source: string;
  readonly trust: 'seen' | 'from memory' | 'common practice, no source';
  readonly unit: string;
  readonly digits: number;
  readonly rows: readonly PrintedRow[];
}

export interface PrintedRow {
  readonly of: string;
  readonly printed: number;
  readonly here: number;
  /** Greatest distance, in the group's unit. */
  readonly tolerance: number;
}

/** Exact: a gallon is 231 in3 of 16.387064 mL. */
const LITRES_PER_GALLON = 3.785411784;
const M2_PER_FT2 = 0.09290304;
const MM_PER_IN = 25.4;
const FOOT_M = 0.3048;
/** A foot of water is 62.4/144 psi. */
const FT_PER_PSI = 2.31;

/** What a plan with this line says of its flow, gph; no pressure is known, and so each emitter gives what is printed on it. */
function gallonsPerHour(line: PlanLine): number {
  const plan = oneBed({ zones: [zone({ plantings: [tomatoes({ lines: [line] })] })] });
  const [bed] = runSeason(gardenOf(plan)).zones[0]?.plantings ?? [];
  return bed === undefined ? Number.NaN : (60 * plantingWeek(bed, 0).flowLpm) / LITRES_PER_GALLON;
}

function dripline(gph: number, inches: number, rows: number, feet: number): PlanLine {
  return { kind: 'dripline', flow: gph, spacing: inches, layout: { kind: 'rows', rows, length: feet } };
}

function hoursForDepth(inches: number, gph: number, ft2: number): number {
  const rate = applicationRateMmPerHour(gph * LITRES_PER_GALLON, ft2 * M2_PER_FT2);
  return runMinutes(inches * MM_PER_IN, netMmPerMinute(rate, 1)) / 60;
}

/** One tape a bed of 30 in, 100 ft long: 250 ft2, all the water counted. */
const HOURS_FOR_AN_INCH: PrintedGroup = {
  what: 'hours for an inch by one drip tape on a 30 in bed',
  source: 'Penn State Extension, Determining how long to run drip irrigation systems for vegetables (2013)',
  trust: 'seen',
  unit: 'h',
  digits: 2,
  rows: (
    [
      [12, 13.2, 11.8],
      [8, 20.4, 7.6],
      [12, 20.4, 7.6],
      [8, 30.6, 5.1],
      [12, 27, 5.8],
      [8, 40.2, 3.9],
      [4, 80.4, 1.9],
    ] as const
  ).map(([inches, gph, hours]) => ({
    of: `emitters every ${inches} in, ${gph} gph in 100 ft`,
    printed: hours,
    here: hoursForDepth(1, gallonsPerHour(dripline((gph * inches) / 1200, inches, 1, 100)), 250),
    tolerance: 0.05,
  })),
};

/** The page prints 62.31 gal for a week of 1.05 in; that is 1.00 in. It counts 37.5 emitters a row; a row holds 37. */
const GARDEN_BED: PrintedGroup = {
  what: 'a bed of 25 x 4 ft, 4 rows of tape, 0.334 gph every 8 in',
  source: 'University of California Santa Cruz, Teaching Organic Farming and Gardening, unit 1.5, exercise 3',
  trust: 'seen',
  unit: '',
  digits: 2,
  rows: [
    { of: 'flow, gph', printed: 50.1, here: gallonsPerHour(dripline(0.334, 8, 4, 25)), tolerance: 0.7 },
    {
      of: 'an inch on it, gal',
      printed: 62.31,
      here: (MM_PER_IN * 100 * M2_PER_FT2) / LITRES_PER_GALLON,
      tolerance: 0.05,
    },
  ],
};

/** Smaller crowns are soaked deeper there (4 ft: 2.04 in), which no single depth gives. */
const SOAKING: PrintedGroup = {
  what: 'gallons that soak a tree by its crown, 1.20 in deep',
  source: 'City of Mesa, Arizona, Water adjustments for plant growth; the depth is found from its table',
  trust: 'seen',
  unit: 'gal',
  digits: 1,
  rows: (
    [
      [8, 38],
      [10, 59],
      [12, 85],
      [14, 115],
      [16, 150],
      [18, 190],
      [20, 235],
    ] as const
  ).map(([feet, gallons]) => ({
    of: `${feet} ft across`,
    printed: gallons,
    here: (1.2 * MM_PER_IN * (Math.PI / 4) * feet ** 2 * M2_PER_FT2) / LITRES_PER_GALLON,
    tolerance: 0.65,
  })),
};

const SHRUB_HOURS: PrintedGroup = {
  what: 'hours of two emitters of 2 gph for a shrub 4 ft across, 12 gal',
  source: SOAKING.source.replace(/;.*/, ''),
  trust: 'seen',
  unit: 'h',
  digits: 2,
  rows: [
    {
      of: '12 gal at 4 gph',
      printed: 3,
      here: 12 / gallonsPerHour({ kind: 'point', flow: 2, count: 2 }),
      tolerance: 1e-9,
    },
  ],
};

/** The page reckons 0.6 gal on a square foot and inch: of 144/231 gal that is a runoff coefficient of 0.9625. */
const BARREL: PrintedGroup = {
  what: '0.25 in on so many square feet',
  source: 'USDA-NRCS with Marietta, Ohio, Rain barrels of fun',
  trust: 'seen',
  unit: 'gal',
  digits: 1,
  rows: (
    [
      ['roof of 24 x 20 ft', 480, 72],
      ['garden of 10 x 35 ft', 350, 52.5],
      ['366 ft2', 366, 55],
    ] as const
  ).map(([of, ft2, printed]) => ({
    of,
    printed,
    here:
      roofYieldL({ roofAreaM2: ft2 * M2_PER_FT2, rainMm: 0.25 * MM_PER_IN, runoffCoefficient: 0.9625 }) /
      LITRES_PER_GALLON,
    tolerance: 0.11,
  })),
};

function feetLost(gpm: number): number {
  const pipe = { insideDiameterMm: 1.049 * MM_PER_IN, lengthM: toSi(100, 'length', 'us'), hazenWilliamsC: 150 };
  const kpa = frictionLossKpa(frictionCoefficient(pipe), 60 * gpm * LITRES_PER_GALLON);
  return FT_PER_PSI * fromSi(kpa, 'pressure', 'us');
}

/** Bore of 1 in schedule 40: 1.049 in, ASTM D1785, from memory. 1 gpm is printed too coarsely to hold against: 0.07. */
const FRICTION: PrintedGroup = {
  what: 'friction in plastic pipe of 1 in, C = 150, feet in 100 ft',
  source: 'Illinois Administrative Code, title 77, part 906, appendix A, exhibit I',
  trust: 'seen',
  unit: 'ft',
  digits: 2,
  rows: (
    [
      [2, 0.28],
      [3, 0.6],
      [4, 1.01],
      [5, 1.52],
      [6, 2.14],
      [7, 2.89],
      [8, 3.63],
      [9, 4.57],
      [10, 5.5],
    ] as const
  ).map(([gpm, feet]) => ({ of: `${gpm} gpm`, printed: feet, here: feetLost(gpm), tolerance: 0.021 * feet })),
};

function feetPerSecond(gpm: number, inches: number): number {
  const flowLph = 60 * gpm * LITRES_PER_GALLON;
  return fromSi(velocityMs({ flowLph, insideDiameterMm: inches * MM_PER_IN }), 'length', 'us');
}

const VELOCITY: PrintedGroup = {
  what: 'how fast water runs in tube of 0.56 in',
  source: 'the trade’s limit of 5 ft/s and what it names for this tube',
  trust: 'common practice, no source',
  unit: 'ft/s',
  digits: 2,
  rows: [
    { of: '3.8 gpm', printed: 5, here: feetPerSecond(3.8, 0.56), tolerance: 0.06 },
    { of: '6 gpm', printed: 7.8, here: feetPerSecond(6, 0.56), tolerance: 0.05 },
  ],
};

const VELOCITY_FORM: PrintedGroup = {
  what: 'the same by 0.4085 Q/d2',
  source: 'fire-protection reference page with the forms of NFPA 13',
  trust: 'seen',
  unit: 'ft/s',
  digits: 3,
  rows: [{ of: '1 gpm in 0.57 in', printed: 1.257, here: feetPerSecond(1, 0.57), tolerance: 0.0006 }],
};

/** Percent less from a plain emitter that has this share of its pressure. */
function percentLess(exponent: number, pressureShare: number): number {
  const emitter = { kind: 'plain', nominalFlowLph: 2, nominalPressureKpa: NOMINAL_PRESSURE_KPA, exponent } as const;
  return 100 * (1 - emitterFlowLph(emitter, pressureShare * NOMINAL_PRESSURE_KPA) / 2);
}

const EMITTERS: PrintedGroup = {
  what: 'what a plain emitter gives less at less pressure, q = k H^x',
  source: 'Keller and Karmeli (1975), NEH 623 ch. 7',
  trust: 'from memory',
  unit: '%',
  digits: 1,
  rows: [
    { of: 'x 0.5, a fifth less pressure', printed: 10.6, here: percentLess(0.5, 0.8), tolerance: 0.05 },
    { of: 'x 1, a fifth less pressure', printed: 20, here: percentLess(1, 0.8), tolerance: 1e-9 },
  ],
};

const SLOPE: PrintedGroup = {
  what: 'the same at 19 instead of 25 psi',
  source: 'notes of the trade on slopes',
  trust: 'common practice, no source',
  unit: '%',
  digits: 1,
  rows: [{ of: 'x 0.5', printed: 13, here: percentLess(0.5, 19 / 25), tolerance: 0.5 }],
};

/** Of a solved line whose emitters give the same at any pressure: what it loses over what a pipe with all the flow would. */
function solvedF(outlets: number): number {
  const emitter = { kind: 'compensating', nominalFlowLph: 2, leastPressureKpa: 0.001 } as const;
  const tube = { insideDiameterMm: 16, hazenWilliamsC: 150 };
  const inletPressureKpa = 400;
  const line = lateral({ topology: 'dead-end', outlets, spacingM: 0.3, emitter, inletPressureKpa, ...tube });
  const full = frictionLossKpa(frictionCoefficient({ ...tube, lengthM: 0.3 * outlets }), 2 * outlets);
  return (inletPressureKpa - line.endPressureKpa) / full;
}

const OUTLETS: PrintedGroup = {
  what: 'F of a line with so many outlets: its loss over that of a pipe with all the flow',
  source: 'Christiansen (1942), Calif. Agr. Exp. Sta. Bull. 670, as tables print it',
  trust: 'from memory',
  unit: '',
  digits: 3,
  rows: (
    [
      [1, 1],
      [2, 0.639],
      [5, 0.457],
      [10, 0.402],
      [20, 0.376],
      [50, 0.361],
      [100, 0.356],
    ] as const
  ).map(([outlets, F]) => ({
    of: outlets === 1 ? '1 outlet' : `${outlets} outlets`,
    printed: F,
    here: solvedF(outlets),
    tolerance: 0.001,
  })),
};

/** The kit's figures are the middles of FAO-56 Table 19, which holds sandy loam to be better and clay to be worse than this page does. */
const AVAILABLE_WATER: PrintedGroup = {
  what: 'water that plants can draw from a foot of soil, a second opinion',
  source: 'East Multnomah Soil and Water Conservation District, Oregon, Scheduling',
  trust: 'seen',
  unit: 'in',
  digits: 2,
  rows: (
    [
      ['sand', 0.9, 0.07],
      ['sandy-loam', 1.2, 0.37],
      ['loam', 1.8, 0.07],
      ['silt-loam', 2, 0.09],
      ['clay-loam', 2.2, 0.08],
      ['clay', 2.4, 0.49],
    ] as const
  ).map(([texture, printed, tolerance]) => ({
    of: texture === 'sand' ? 'fine sand; here sand' : texture.replace('-', ' '),
    printed,
    here: totalAvailableWaterMm(findTexture(texture).availableWaterUsed, FOOT_M) / MM_PER_IN,
    tolerance,
  })),
};

export const PRINTED_EXAMPLES: readonly PrintedGroup[] = [
  HOURS_FOR_AN_INCH,
  GARDEN_BED,
  SOAKING,
  SHRUB_HOURS,
  BARREL,
  FRICTION,
  VELOCITY,
  VELOCITY_FORM,
  EMITTERS,
  SLOPE,
  OUTLETS,
  AVAILABLE_WATER,
];
