import type { CropId } from './crops.data.ts';

/** Days in each of the four FAO-56 growth stages. */
export interface CropStageLengths {
  readonly iniDays: number;
  readonly devDays: number;
  readonly midDays: number;
  readonly lateDays: number;
}

/** One row of stage lengths: the lengths used. */
export interface CropStages extends CropStageLengths {
  readonly cropIds: readonly CropId[];
  readonly source: string;
}

const TABLE_11 = 'FAO-56 Table 11 (pp. 104-108)';
const TABLE_11_MEMORY = 'FAO-56 Table 11; row from memory';

/** Marks stage lengths for which no publication was found. */
export const ASSUMPTION = 'assumption of this kit';

/** Stage lengths by crop. Where a crop has several rows, the first is used until somebody chooses. */
export const CROP_STAGES: readonly CropStages[] = [
  {
    cropIds: ['lettuce'],
    iniDays: 20,
    devDays: 30,
    midDays: 15,
    lateDays: 10,
    source: TABLE_11,
  },
  {
    cropIds: ['lettuce'],
    iniDays: 30,
    devDays: 40,
    midDays: 25,
    lateDays: 10,
    source: TABLE_11,
  },
  {
    cropIds: ['spinach'],
    iniDays: 20,
    devDays: 20,
    midDays: 20,
    lateDays: 5,
    source: TABLE_11,
  },
  {
    cropIds: ['radish'],
    iniDays: 5,
    devDays: 10,
    midDays: 15,
    lateDays: 5,
    source: TABLE_11,
  },
  {
    cropIds: ['cabbage', 'broccoli'],
    iniDays: 20,
    devDays: 30,
    midDays: 20,
    lateDays: 10,
    source: TABLE_11,
  },
  {
    cropIds: ['carrots'],
    iniDays: 30,
    devDays: 40,
    midDays: 60,
    lateDays: 20,
    source: TABLE_11,
  },
  {
    cropIds: ['sweet-pepper'],
    iniDays: 30,
    devDays: 35,
    midDays: 40,
    lateDays: 20,
    source: TABLE_11,
  },
  {
    cropIds: ['tomato'],
    iniDays: 35,
    devDays: 40,
    midDays: 50,
    lateDays: 30,
    source: TABLE_11,
  },
  {
    cropIds: ['tomato'],
    iniDays: 30,
    devDays: 40,
    midDays: 45,
    lateDays: 30,
    source: TABLE_11,
  },
  {
    cropIds: ['tomato'],
    iniDays: 30,
    devDays: 40,
    midDays: 40,
    lateDays: 25,
    source: TABLE_11,
  },
  {
    cropIds: ['cucumber'],
    iniDays: 20,
    devDays: 30,
    midDays: 40,
    lateDays: 15,
    source: TABLE_11,
  },
  {
    cropIds: ['squash-zucchini'],
    iniDays: 20,
    devDays: 30,
    midDays: 25,
    lateDays: 15,
    source: TABLE_11,
  },
  {
    cropIds: ['squash-zucchini'],
    iniDays: 25,
    devDays: 35,
    midDays: 25,
    lateDays: 15,
    source: TABLE_11,
  },
  {
    cropIds: ['pumpkin-winter-squash'],
    iniDays: 25,
    devDays: 35,
    midDays: 35,
    lateDays: 25,
    source: TABLE_11,
  },
  {
    cropIds: ['beans-green'],
    iniDays: 20,
    devDays: 30,
    midDays: 30,
    lateDays: 10,
    source: TABLE_11,
  },
  {
    cropIds: ['beans-green'],
    iniDays: 15,
    devDays: 25,
    midDays: 25,
    lateDays: 10,
    source: TABLE_11,
  },
  {
    cropIds: ['peas-fresh'],
    iniDays: 15,
    devDays: 25,
    midDays: 35,
    lateDays: 15,
    source: TABLE_11,
  },
  {
    cropIds: ['potato'],
    iniDays: 25,
    devDays: 30,
    midDays: 45,
    lateDays: 30,
    source: TABLE_11,
  },
  {
    cropIds: ['sweet-corn'],
    iniDays: 20,
    devDays: 25,
    midDays: 25,
    lateDays: 10,
    source: TABLE_11,
  },
  {
    cropIds: ['sweet-corn'],
    iniDays: 30,
    devDays: 30,
    midDays: 30,
    lateDays: 10,
    source: TABLE_11,
  },
  {
    cropIds: ['apple-cherry-pear', 'peach-stone-fruit'],
    iniDays: 20,
    devDays: 70,
    midDays: 90,
    lateDays: 30,
    source: TABLE_11,
  },
  {
    cropIds: ['grapes-table'],
    iniDays: 20,
    devDays: 50,
    midDays: 90,
    lateDays: 20,
    source: TABLE_11,
  },
  {
    cropIds: ['eggplant'],
    iniDays: 30,
    devDays: 45,
    midDays: 40,
    lateDays: 25,
    source: TABLE_11_MEMORY,
  },
  {
    cropIds: ['onion-dry'],
    iniDays: 15,
    devDays: 25,
    midDays: 70,
    lateDays: 40,
    source: TABLE_11_MEMORY,
  },
  {
    cropIds: ['onion-green'],
    iniDays: 25,
    devDays: 30,
    midDays: 10,
    lateDays: 5,
    source: TABLE_11_MEMORY,
  },
  {
    cropIds: ['watermelon'],
    iniDays: 20,
    devDays: 30,
    midDays: 30,
    lateDays: 30,
    source: TABLE_11_MEMORY,
  },
  {
    cropIds: ['beets'],
    iniDays: 15,
    devDays: 25,
    midDays: 20,
    lateDays: 10,
    source: TABLE_11_MEMORY,
  },
  {
    cropIds: ['asparagus'],
    iniDays: 90,
    devDays: 30,
    midDays: 200,
    lateDays: 45,
    source: TABLE_11_MEMORY,
  },
  {
    cropIds: ['citrus'],
    iniDays: 60,
    devDays: 90,
    midDays: 120,
    lateDays: 95,
    source: TABLE_11_MEMORY,
  },
  {
    cropIds: ['strawberries'],
    iniDays: 30,
    devDays: 45,
    midDays: 120,
    lateDays: 30,
    source: ASSUMPTION,
  },
  {
    cropIds: ['mint'],
    iniDays: 30,
    devDays: 40,
    midDays: 120,
    lateDays: 30,
    source: ASSUMPTION,
  },
  {
    cropIds: ['bush-berries'],
    iniDays: 20,
    devDays: 70,
    midDays: 90,
    lateDays: 30,
    source: ASSUMPTION,
  },
  {
    cropIds: ['turf-cool-season', 'turf-warm-season'],
    iniDays: 30,
    devDays: 30,
    midDays: 275,
    lateDays: 30,
    source: ASSUMPTION,
  },
];
