import type { CropGroupId } from '../../../src/engine/plants/crops.data.ts';

/** One crop group of FAO-56 Table 12 with the coefficients printed for the whole group; null where none are. */
export interface CropGroup {
  readonly id: CropGroupId;
  readonly kcIni: number | null;
  readonly kcMid: number | null;
  readonly kcEnd: number | null;
  readonly source: string;
}

const TABLE_12 = 'FAO-56 Table 12 (pp. 110-114)';
const TABLE_12_KC_INI = 'FAO-56 Table 12 (pp. 110-114); Kc mid and Kc end of the group from memory';
const TABLE_12_WHOLE = 'FAO-56 Table 12; group row from memory';
const TABLE_12_NONE = 'FAO-56 Table 12, which prints no coefficients for the group';

/** Crop groups of FAO-56. A crop whose own Kc ini is blank takes its group's. */
export const CROP_GROUPS: readonly CropGroup[] = [
  { id: 'small-vegetables', kcIni: 0.7, kcMid: 1.05, kcEnd: 0.95, source: TABLE_12 },
  { id: 'solanum', kcIni: 0.6, kcMid: 1.15, kcEnd: 0.8, source: TABLE_12 },
  { id: 'cucumber', kcIni: 0.5, kcMid: 1, kcEnd: 0.8, source: TABLE_12 },
  {
    id: 'roots-and-tubers',
    kcIni: 0.5,
    kcMid: 1.1,
    kcEnd: 0.95,
    source: TABLE_12_KC_INI,
  },
  { id: 'legumes', kcIni: 0.4, kcMid: 1.15, kcEnd: 0.55, source: TABLE_12_WHOLE },
  {
    id: 'perennial-vegetables',
    kcIni: 0.5,
    kcMid: 1,
    kcEnd: 0.8,
    source: TABLE_12_WHOLE,
  },
  { id: 'cereals', kcIni: 0.3, kcMid: 1.15, kcEnd: 0.4, source: TABLE_12_KC_INI },
  {
    id: 'grapes-and-berries',
    kcIni: null,
    kcMid: null,
    kcEnd: null,
    source: TABLE_12_NONE,
  },
  { id: 'fruit-trees', kcIni: null, kcMid: null, kcEnd: null, source: TABLE_12_NONE },
  { id: 'turf', kcIni: null, kcMid: null, kcEnd: null, source: TABLE_12_NONE },
];
