import type { Names } from '../names.ts';

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
  readonly name: Names;
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
  { id: 'small-vegetables', name: { en: 'Small vegetables' }, kcIni: 0.7, kcMid: 1.05, kcEnd: 0.95, source: TABLE_12 },
  { id: 'solanum', name: { en: 'Solanum family' }, kcIni: 0.6, kcMid: 1.15, kcEnd: 0.8, source: TABLE_12 },
  { id: 'cucumber', name: { en: 'Cucumber family' }, kcIni: 0.5, kcMid: 1, kcEnd: 0.8, source: TABLE_12 },
  {
    id: 'roots-and-tubers',
    name: { en: 'Roots and tubers' },
    kcIni: 0.5,
    kcMid: 1.1,
    kcEnd: 0.95,
    source: TABLE_12_KC_INI,
  },
  { id: 'legumes', name: { en: 'Legumes' }, kcIni: 0.4, kcMid: 1.15, kcEnd: 0.55, source: TABLE_12_WHOLE },
  {
    id: 'perennial-vegetables',
    name: { en: 'Perennial vegetables' },
    kcIni: 0.5,
    kcMid: 1,
    kcEnd: 0.8,
    source: TABLE_12_WHOLE,
  },
  { id: 'cereals', name: { en: 'Cereals' }, kcIni: 0.3, kcMid: 1.15, kcEnd: 0.4, source: TABLE_12_KC_INI },
  {
    id: 'grapes-and-berries',
    name: { en: 'Grapes and berries' },
    kcIni: null,
    kcMid: null,
    kcEnd: null,
    source: TABLE_12_NONE,
  },
  { id: 'fruit-trees', name: { en: 'Fruit trees' }, kcIni: null, kcMid: null, kcEnd: null, source: TABLE_12_NONE },
  { id: 'turf', name: { en: 'Turf' }, kcIni: null, kcMid: null, kcEnd: null, source: TABLE_12_NONE },
];
