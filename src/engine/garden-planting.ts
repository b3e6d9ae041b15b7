/** A planting as the engine sees it: its need, its ground or pots, its days and its lines. */
import type { DayNumber } from './calendar.ts';
import type { LineKind } from './line/line-kinds.ts';
import type { Names } from './names.ts';
import type { Mulch } from './plants/mulch.ts';
import type { MixId } from './soil/potting-mixes.data.ts';

export type EfficiencyBasis = 'default' | 'efficiency' | 'distribution-uniformity' | 'computed-uniformity';

export interface GardenPlanting {
  readonly id: string;
  readonly name: string;
  readonly coefficient: PlantCoefficient;
  readonly establishing?: { readonly until: DayNumber; readonly factor: number } | undefined;
  readonly areaM2: number;
  /** Plants in the planting, where they are counted. */
  readonly plants?: number | undefined;
  readonly rootZone: RootZone;
  /** It grows in pots, boxes or baskets; its root zone is their mix. */
  readonly container?: GardenContainer | undefined;
  /** Share of its ground that its lines wet at the depth of its roots, above 0 to 1. Left out: 1. */
  readonly wettedShare?: number | undefined;
  /** The same of each week of the season, where other lines, or another pressure, wet another share. */
  readonly wettedShareByWeek?: readonly number[] | undefined;
  /** Where the plan sets the share. */
  readonly isShareTyped?: boolean | undefined;
  /** What reaches its roots' ground of the rain that falls, over what falls on as much open ground. Left out: 1. */
  readonly rainFactor?: number | undefined;
  readonly mulch?: Mulch | undefined;
  /** Share of its irrigation that is to drain and carry salt away, 0 to 0.5. Left out: 0. */
  readonly leachingFraction?: number | undefined;
  /** Days in a row on which it asks for no water, in their order; none overlaps another. */
  readonly rest?: readonly RestSpan[] | undefined;
  /** Net litres of a soak before its first day. */
  readonly soakLitres?: number | undefined;
  readonly watering: 'keep' | 'refill';
  /** First and last day in the ground. */
  readonly from: DayNumber;
  readonly to: DayNumber;
  readonly hasShutOff: boolean;
  /** In order of `from`; those that lie on one day are fed side by side, behind the solid ones. */
  readonly lines: readonly GardenLine[];
  /** What the lines give together, in the order of their days: `plantingFlows` of the line's entry solves it. */
  readonly flows: readonly PlantingFlow[];
}

export interface GardenContainer {
  readonly count: number;
  /** Mix in one of them. */
  readonly volumeLitres: number;
  /** Undefined where its available water is typed. */
  readonly mix?: MixId | undefined;
  /** Across the opening of one. */
  readonly openingM: number;
  /** Of the rain on the opening, what reaches it. */
  readonly rainShare: number;
}

/** Without leaves, in frozen ground, or left to dry before harvest. Both days included. */
export interface RestSpan {
  readonly from: DayNumber;
  readonly to: DayNumber;
  readonly kind: 'leafless' | 'frozen' | 'dry-down';
}

/** Days in a row on which the same lines lie on a planting and the same pressure feeds them. */
export interface PlantingFlow {
  readonly from: DayNumber;
  readonly to: DayNumber;
  /** Of all its lines, L/h; 0 where the pressure does not do for any. */
  readonly flowLph: number;
  /** Net over gross, 0..1: of its lines, each by its flow. */
  readonly efficiency: number;
  /** Share of its ground that they wet, where not all flows of the planting wet as much. Left out: the planting's. */
  readonly wettedShare?: number | undefined;
  /** At the inlet of the lines; undefined where none is known and each gives its nominal flow. */
  readonly pressureKpa?: number | undefined;
  /** Of each of the planting's lines, in their order, L/h; 0 while it does not lie. */
  readonly linesLph: readonly number[];
}

/** How deep a planting roots, and how far the soil there may dry. Plantings that are alike in it share one. */
export interface RootZone {
  readonly depthM: number;
  /** Of an annual crop: how deep it roots through its first stage; from then to mid-season it grows to `depthM`. Left out: full depth. */
  readonly initialDepthM?: number | undefined;
  /** Of a potting mix, m3 of water in a m3. Left out: the soil's. */
  readonly availableWater?: number | undefined;
  /** Allowed depletion as a share of the available water, before its adjustment to the day's demand. */
  readonly allowedDepletion: number;
  /** FAO-56 p. 162: crops adjust the share to the day's demand, landscape plants keep it. */
  readonly adjustsDepletion: boolean;
  /** Depletion that may remain after watering, as a share of the allowed depletion; 0 = full. */
  readonly targetDepletion: number;
  /** Depletion on the first day in the ground, as a share of the allowed depletion. */
  readonly startDepletion: number;
}

export type PlantCoefficient =
  | {
      readonly kind: 'landscape';
      readonly name: Names;
      readonly factor: number;
      readonly density: number;
      readonly microclimate: number;
      /** What its mulch leaves of it. Left out: 1. */
      readonly mulchFactor?: number | undefined;
      /** Of the factor; undefined where the plan sets it. */
      readonly source: string | undefined;
    }
  | {
      readonly kind: 'crop';
      readonly name: Names;
      /** First day of growth; of a crop that stays, in any year. */
      readonly plantedOn: DayNumber;
      /** Growth starts anew every year on the day of `plantedOn`. Left out: an annual. */
      readonly perennial?: boolean | undefined;
      readonly stageDays: readonly [number, number, number, number];
      readonly kcInitial: number;
      readonly kcMid: number;
      readonly kcEnd: number;
      /** Kc initial, mid and end without the mulch that the three above are made with. */
      readonly bareKc?: readonly [number, number, number] | undefined;
      /** Of the coefficients; undefined where the plan sets one. */
      readonly source: string | undefined;
      /** Of the stages; undefined where the plan sets them. */
      readonly stagesSource?: string | undefined;
    };

export interface GardenLine {
  readonly from: DayNumber;
  /** Last day; left out: it stays. */
  readonly to?: DayNumber | undefined;
  readonly kind: LineKind;
  readonly emitters: number;
  readonly emitterFlowLph: number;
  /** emitters x emitterFlowLph: what is printed on it, not what its pressure gives. */
  readonly flowLph: number;
  /** Net depth over gross depth, 0..1. Left out: the zone's. */
  readonly efficiency?: number | undefined;
  readonly efficiencyBasis?: EfficiencyBasis | undefined;
  readonly spacingM?: number | undefined;
  /** Length of all tubing that carries emitters; of a solid line its own, where it is known. */
  readonly lengthM?: number | undefined;
  /** Number of equal runs the length is laid in (rows, loops round plants). */
  readonly runs?: number | undefined;
  readonly topology: 'dead-end' | 'loop';
  readonly slopeSide: 'level' | 'uphill' | 'downhill';
  /** Rise of the line from its inlet, m per m; negative runs downhill. */
  readonly riseMPerM: number;
  readonly insideDiameterMm: number;
  readonly compensating: boolean;
  readonly leastPressureKpa: number;
  /** Exponent x in q = k H^x where the emitter does not compensate. */
  readonly exponent: number;
}
