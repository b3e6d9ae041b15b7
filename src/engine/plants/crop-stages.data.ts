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

const TABLE_11 = { source: 'FAO-56 Table 11 (pp. 104-108)' };
const TABLE_11_MEMORY = { source: 'FAO-56 Table 11; row from memory' };

/** Marks stage lengths for which no publication was found. */
export const ASSUMPTION = 'assumption of this kit';
const ASSUMED = { source: ASSUMPTION };

type Row = readonly [
  cropIds: readonly CropId[],
  ini: number,
  dev: number,
  mid: number,
  late: number,
  from: Pick<CropStages, 'source'>,
];

const ROWS: readonly Row[] = [
  [['lettuce'], 20, 30, 15, 10, TABLE_11],
  [['lettuce'], 30, 40, 25, 10, TABLE_11],
  [['spinach'], 20, 20, 20, 5, TABLE_11],
  [['radish'], 5, 10, 15, 5, TABLE_11],
  [['cabbage', 'broccoli'], 20, 30, 20, 10, TABLE_11],
  [['carrots'], 30, 40, 60, 20, TABLE_11],
  [['sweet-pepper'], 30, 35, 40, 20, TABLE_11],
  [['tomato'], 35, 40, 50, 30, TABLE_11],
  [['tomato'], 30, 40, 45, 30, TABLE_11],
  [['tomato'], 30, 40, 40, 25, TABLE_11],
  [['cucumber'], 20, 30, 40, 15, TABLE_11],
  [['squash-zucchini'], 20, 30, 25, 15, TABLE_11],
  [['squash-zucchini'], 25, 35, 25, 15, TABLE_11],
  [['pumpkin-winter-squash'], 25, 35, 35, 25, TABLE_11],
  [['beans-green'], 20, 30, 30, 10, TABLE_11],
  [['beans-green'], 15, 25, 25, 10, TABLE_11],
  [['peas-fresh'], 15, 25, 35, 15, TABLE_11],
  [['potato'], 25, 30, 45, 30, TABLE_11],
  [['sweet-corn'], 20, 25, 25, 10, TABLE_11],
  [['sweet-corn'], 30, 30, 30, 10, TABLE_11],
  [['apple-cherry-pear', 'peach-stone-fruit'], 20, 70, 90, 30, TABLE_11],
  [['grapes-table'], 20, 50, 90, 20, TABLE_11],
  [['eggplant'], 30, 45, 40, 25, TABLE_11_MEMORY],
  [['onion-dry'], 15, 25, 70, 40, TABLE_11_MEMORY],
  [['onion-green'], 25, 30, 10, 5, TABLE_11_MEMORY],
  [['watermelon'], 20, 30, 30, 30, TABLE_11_MEMORY],
  [['beets'], 15, 25, 20, 10, TABLE_11_MEMORY],
  [['asparagus'], 90, 30, 200, 45, TABLE_11_MEMORY],
  [['citrus'], 60, 90, 120, 95, TABLE_11_MEMORY],
  [['strawberries'], 30, 45, 120, 30, ASSUMED],
  [['garlic'], 20, 35, 110, 45, ASSUMED],
  [['mint'], 30, 40, 120, 30, ASSUMED],
  [['bush-berries'], 20, 70, 90, 30, ASSUMED],
  [['turf-cool-season', 'turf-warm-season'], 30, 30, 275, 30, ASSUMED],
];

/** Stage lengths by crop. Where a crop has several rows, the first is used until somebody chooses. */
export const CROP_STAGES: readonly CropStages[] = ROWS.map(([cropIds, iniDays, devDays, midDays, lateDays, from]) => ({
  cropIds,
  iniDays,
  devDays,
  midDays,
  lateDays,
  ...from,
}));
