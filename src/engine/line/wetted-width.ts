import { numberOnly } from '../number-only.ts';
import type { SoilTextureId } from '../soil/textures.data.ts';
import { toSi } from '../units.ts';
import { WETTED_DEPTHS_FT, WETTED_WIDTHS, WETTING_GROUPS, WIDTH_BY_DEPTH, WIDTH_BY_FLOW } from './wetted-width.data.ts';

export interface WettingEmitter {
  readonly texture: SoilTextureId;
  readonly rootDepthM: number;
  /** Of one emitter. */
  readonly flowLph: number;
}

/** The flow that the table stands for: 1 gph. */
const TABLE_FLOW_LPH = toSi(1, 'emitterFlow', 'us');

const metres = (feet: number): number => toSi(feet, 'length', 'us');

/**
 * How wide one emitter wets the soil at the depth of the roots, m: the handbook's width for 1 gph, in even soil, by texture and
 * depth; a straight line between its two depths, the deeper one beyond, and less deep x (depth / 2.5 ft)^0.35; another flow
 * x (q / 1 gph)^0.33. 0 where nothing flows.
 *
 * Source: USDA-NRCS NEH 623 ch. 7, after Keller and Karmeli (1975); exponents of Schwartzman and Zur (1986). Both from memory.
 */
export function wettedWidthM({ texture, rootDepthM, flowLph }: WettingEmitter): number {
  const [low, high] = WETTED_DEPTHS_FT.map(metres) as [number, number];
  const [narrow, wide] = WETTED_WIDTHS[WETTING_GROUPS[texture]].widthFt.map(metres) as [number, number];
  const byDepth =
    rootDepthM < low
      ? narrow * (rootDepthM / low) ** WIDTH_BY_DEPTH
      : narrow + (wide - narrow) * Math.min(1, (rootDepthM - low) / (high - low));
  return numberOnly(byDepth * (flowLph / TABLE_FLOW_LPH) ** WIDTH_BY_FLOW);
}
