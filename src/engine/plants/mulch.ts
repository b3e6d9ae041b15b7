import { numberOnly } from '../number-only.ts';
import type { CropCoefficients } from './crop-coefficient.ts';
import type { CropId } from './crops.data.ts';
import {
  EVAPORATION_LESS,
  EVAPORATION_OF_KC,
  PLASTIC_KC_INITIAL,
  PLASTIC_MULCH,
  PLASTIC_MULCH_MEAN,
} from './mulch.data.ts';

/** What covers the ground; `cover`: share of it under organic mulch, 0 to 1. */
export type Mulch = { readonly kind: 'organic'; readonly cover: number } | { readonly kind: 'plastic' };

/**
 * Crop coefficients of mulched ground.
 *
 * Organic: Kc ini x (1 - 0.5 cover), since it is mostly evaporation; of mid-season and end only the small part that is evaporation
 * falls so: x (1 - 0.5 cover x 0.05). Plastic over all of the ground: Kc ini at most 0.10, mid and end less by the crop's share.
 *
 * Source: FAO-56 ch. 10, Table 25 and Example 45 (pp. 196-197).
 */
export function mulchedCoefficients(kc: CropCoefficients, mulch: Mulch, crop: CropId): CropCoefficients {
  const later = laterFactor(mulch, crop);
  return {
    kcIni: mulch.kind === 'plastic' ? Math.min(kc.kcIni, PLASTIC_KC_INITIAL) : kc.kcIni * bareEvaporation(mulch.cover),
    kcMid: kc.kcMid * later,
    kcEnd: kc.kcEnd * later,
  };
}

/** What mulch leaves of a landscape coefficient: as of a crop in mid-season, whose leaves cover the ground. */
export function mulchedLandscapeFactor(mulch: Mulch): number {
  return laterFactor(mulch);
}

/** Whether rain comes through: not through a sheet (Penn State Extension, drip irrigation for vegetables, 2013). */
export function letsRainThrough(mulch: Mulch | undefined): boolean {
  return mulch?.kind !== 'plastic';
}

function laterFactor(mulch: Mulch, crop?: CropId): number {
  if (mulch.kind === 'organic') return 1 - (1 - bareEvaporation(mulch.cover)) * EVAPORATION_OF_KC;
  return 1 - ((crop && PLASTIC_MULCH[crop]) ?? PLASTIC_MULCH_MEAN).kcLess;
}

/** Share of bare soil's evaporation that is left under so much cover. */
function bareEvaporation(cover: number): number {
  return 1 - EVAPORATION_LESS * numberOnly(cover);
}
