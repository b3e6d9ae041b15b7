import type { EmitterLaw } from '../../../src/engine/line/emitter.ts';
import type { Reaches } from '../../../src/engine/line/reaches.ts';

export interface EpanetCase {
  readonly name: string;
  readonly fed: 'one end' | 'both ends';
  readonly outlets: number;
  readonly insideDiameterMm: number;
  readonly C: number;
  /** Emitter exponent; every emitter gives 3 L/h at 10 m. */
  readonly exponent: number;
  /** Head of the reservoirs above the first one's elevation. */
  readonly headM: number;
  /** Height of the tube above the first reservoir, at a distance along it. */
  readonly heightM: (alongM: number) => number;
  /** As EPANET reports them: at the first, the middle and the last outlet; flow from each reservoir. */
  readonly published: {
    readonly headsM: readonly number[];
    readonly flowsLph: readonly number[];
    readonly nearLph: number;
    readonly farLph: number;
  };
}

const SPACING_M = 0.3;

const BASE = {
  fed: 'one end',
  outlets: 120,
  insideDiameterMm: 14.2,
  C: 140,
  exponent: 0.5,
  headM: 12,
  heightM: () => 0,
} as const;

/**
 * Networks solved once by EPANET 2.3.5: junctions every 0.3 m with an emitter each, pipes between them, reservoirs at a
 * fixed head in front of the first and (loops) behind the last; options Units LPS, Headloss H-W, Accuracy 1e-6. Anybody
 * can enter the same numbers and run it again.
 */
export const EPANET_CASES = Object.freeze<readonly EpanetCase[]>([
  {
    ...BASE,
    name: 'level',
    published: {
      headsM: [11.98487345473237, 11.449284462142918, 11.360125053198157],
      flowsLph: [3.284263404366225, 3.2100398776228167, 3.1975166219862596],
      nearLph: 386.4445068176361,
      farLph: 0,
    },
  },
  {
    ...BASE,
    name: 'uphill 5 %',
    heightM: (alongM) => 0.05 * alongM,
    published: {
      headsM: [11.970942404837976, 10.595896028181292, 9.61707572324004],
      flowsLph: [3.2823540583481043, 3.088091064940189, 2.942000705458286],
      nearLph: 371.45054920839027,
      farLph: 0,
    },
  },
  {
    ...BASE,
    name: 'downhill 5 %',
    heightM: (alongM) => -0.05 * alongM,
    published: {
      headsM: [11.998823824464287, 12.303307723022865, 13.103912491106803],
      flowsLph: [3.2861742866162698, 3.327608292861497, 3.4341696583011343],
      nearLph: 400.70002870665655,
      farLph: 0,
    },
  },
  {
    ...BASE,
    name: 'laminar emitters',
    exponent: 1,
    published: {
      headsM: [11.982910194763676, 11.38215325586489, 11.282961201247778],
      flowsLph: [3.594873058429104, 3.414645976759468, 3.3848883603743345],
      nearLph: 412.76553210361766,
      farLph: 0,
    },
  },
  {
    ...BASE,
    name: 'narrow tube, more than half the pressure lost',
    outlets: 40,
    insideDiameterMm: 4.3,
    C: 130,
    published: {
      headsM: [11.516111596541187, 6.442722981294358, 5.611468456802029],
      flowsLph: [3.219394420832458, 2.407997234874858, 2.247292061820595],
      nearLph: 100.68780020181747,
      farLph: 0,
    },
  },
  {
    ...BASE,
    fed: 'both ends',
    name: 'level',
    published: {
      headsM: [11.995672839288977, 11.906874410668147, 11.995672839288993],
      flowsLph: [3.2857427707232607, 3.273558762203822, 3.285742770723263],
      nearLph: 196.6078188090821,
      farLph: -196.60781880871016,
    },
  },
  {
    ...BASE,
    fed: 'both ends',
    name: 'through to a second feed 5 % up the slope',
    heightM: (alongM) => 0.05 * alongM,
    published: {
      headsM: [11.980900982182334, 11.013432500702244, 10.196056155599832],
      flowsLph: [3.2837190628864996, 3.148347066419508, 3.029265676701356],
      nearLph: 190.941030854552,
      farLph: -187.00342830854981,
    },
  },
  {
    ...BASE,
    fed: 'both ends',
    name: 'ring 5 % up the slope and back',
    heightM: (alongM) => 0.05 * Math.min(alongM, 121 * SPACING_M - alongM),
    published: {
      headsM: [11.98082629999462, 11.010999203631425, 11.98082629999461],
      flowsLph: [3.2837088284431144, 3.1479992508367243, 3.283708828443113],
      nearLph: 192.81165971254887,
      farLph: -192.81165971281897,
    },
  },
]);

/**
 * Friction by EPANET's own Hazen-Williams constant, 4.727 L Q^1.852 / (C^1.852 d^4.871) in ft and ft3/s (EPANET manual,
 * table of headloss formulas).
 */
export function reachesOfCase({ outlets, fed, insideDiameterMm, C, heightM }: EpanetCase): Reaches {
  const count = fed === 'both ends' ? outlets + 1 : outlets;
  const M_PER_FT = 0.3048;
  const cubicFeetPerSecond = 1 / 3600 / 28.316846592;
  const perFoot = (4.727 * (cubicFeetPerSecond / C) ** 1.852) / (insideDiameterMm / 1000 / M_PER_FT) ** 4.871;
  const reaches = Array.from({ length: count }, (_, reach) => reach);
  return {
    frictions: Float64Array.from(reaches, () => perFoot * SPACING_M),
    climbs: Float64Array.from(reaches, (reach) => heightM((reach + 1) * SPACING_M) - heightM(reach * SPACING_M)),
  };
}

export function lawOf({ exponent }: EpanetCase): EmitterLaw {
  return (headM) => (headM > 0 ? 3 * (headM / 10) ** exponent : 0);
}
