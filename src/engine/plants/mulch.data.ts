import type { CropId } from './crops.data.ts';

export interface PlasticMulch {
  /** What a sheet over all of the ground takes off Kc of mid-season and end, as a share. */
  readonly kcLess: number;
  readonly source: string;
}

const TABLE_25 = 'FAO-56 Table 25 (p. 196)';

/** Of each printed range the lesser end, as the worked example of the book does for cucumber (Example 45, p. 197). */
export const PLASTIC_MULCH: Partial<Readonly<Record<CropId, PlasticMulch>>> = {
  'squash-zucchini': { kcLess: 0.05, source: TABLE_25 },
  'pumpkin-winter-squash': { kcLess: 0.05, source: TABLE_25 },
  cucumber: { kcLess: 0.15, source: TABLE_25 },
  watermelon: { kcLess: 0.25, source: TABLE_25 },
  tomato: { kcLess: 0.35, source: TABLE_25 },
};

/** The table's mean of all crops, lesser end. */
export const PLASTIC_MULCH_MEAN: PlasticMulch = { kcLess: 0.1, source: TABLE_25 };

/** Kc initial under plastic (FAO-56 p. 196). */
export const PLASTIC_KC_INITIAL = 0.1;

/** Soil evaporation falls by 5 % for each 10 % of ground under organic mulch (FAO-56 p. 197). */
export const EVAPORATION_LESS = 0.5;

/** Of Kc in mid-season and at the end, what is evaporation: 5 to 10 % (FAO-56 p. 197), the lesser end. */
export const EVAPORATION_OF_KC = 0.05;
