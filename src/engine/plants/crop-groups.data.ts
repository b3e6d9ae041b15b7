export type CropGroupId =
  | 'small-vegetables'
  | 'solanum'
  | 'cucumber'
  | 'roots-and-tubers'
  | 'legumes'
  | 'perennial-vegetables'
  | 'cereals'
  | 'grapes-and-berries'
  | 'fruit-trees'
  | 'turf';

/** One crop group of FAO-56 Table 12 with the coefficients printed for the whole group; null where none are. */
export interface CropGroup {
  readonly id: CropGroupId;
  readonly name: string;
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
  { id: 'small-vegetables', name: 'Small vegetables', kcIni: 0.7, kcMid: 1.05, kcEnd: 0.95, source: TABLE_12 },
  { id: 'solanum', name: 'Solanum family', kcIni: 0.6, kcMid: 1.15, kcEnd: 0.8, source: TABLE_12 },
  { id: 'cucumber', name: 'Cucumber family', kcIni: 0.5, kcMid: 1, kcEnd: 0.8, source: TABLE_12 },
  { id: 'roots-and-tubers', name: 'Roots and tubers', kcIni: 0.5, kcMid: 1.1, kcEnd: 0.95, source: TABLE_12_KC_INI },
  { id: 'legumes', name: 'Legumes', kcIni: 0.4, kcMid: 1.15, kcEnd: 0.55, source: TABLE_12_WHOLE },
  {
    id: 'perennial-vegetables',
    name: 'Perennial vegetables',
    kcIni: 0.5,
    kcMid: 1,
    kcEnd: 0.8,
    source: TABLE_12_WHOLE,
  },
  { id: 'cereals', name: 'Cereals', kcIni: 0.3, kcMid: 1.15, kcEnd: 0.4, source: TABLE_12_KC_INI },
  {
    id: 'grapes-and-berries',
    name: 'Grapes and berries',
    kcIni: null,
    kcMid: null,
    kcEnd: null,
    source: TABLE_12_NONE,
  },
  { id: 'fruit-trees', name: 'Fruit trees', kcIni: null, kcMid: null, kcEnd: null, source: TABLE_12_NONE },
  { id: 'turf', name: 'Turf', kcIni: null, kcMid: null, kcEnd: null, source: TABLE_12_NONE },
];
