/** The row of a planting as a browser has kept it, where anything may lie by now. */
import * as v from 'valibot';
import { CROP_IDS } from '../../engine/plants/crops.data.ts';
import { WATER_USE_CLASS_IDS } from '../../engine/plants/water-use-classes.data.ts';
import { MIX_IDS } from '../../engine/soil/potting-mixes.data.ts';
import { PLANT_REGIONS } from '../../exchange/plants/plant-regions.ts';
import { PLANT_KINDS } from '../../exchange/plants/usual-roots.ts';
import { sameData } from '../../plan/same-data.ts';
import type { PlanZone } from '../../plan/schema/plan-schema.ts';
import { needSchema } from '../../plan/schema/planting.ts';
import { isoDay } from '../../plan/schema/text.ts';
import type { RowText } from './plant-row.ts';

/** Nobody types more into one field. */
const MOST_LETTERS = 500;
const MOST_NAMES = 50;

const text = v.pipe(v.string(), v.maxLength(MOST_LETTERS));
const names = v.pipe(v.array(text), v.minLength(1), v.maxLength(MOST_NAMES));
const classId = v.picklist(WATER_USE_CLASS_IDS);
const feet = v.pipe(v.number(), v.minValue(0.1), v.maxValue(500));
const listed = { names, folded: names };

const listedSchema = v.variant('type', [
  v.object({ type: v.literal('crop'), crop: v.picklist(CROP_IDS), ...listed }),
  v.object({
    type: v.literal('plant'),
    botanical: text,
    kind: v.picklist(PLANT_KINDS),
    byRegion: v.object(v.entriesFromList(PLANT_REGIONS, v.exactOptional(classId))),
    class: classId,
    isClassFromMemory: v.boolean(),
    spreadFt: v.object({ least: feet, most: feet }),
    isSpreadFromMemory: v.boolean(),
    ...listed,
  }),
]);

const rowSchema = v.object({
  name: v.fallback(text, ''),
  plant: v.fallback(text, ''),
  listed: v.fallback(v.optional(listedSchema), undefined),
  need: v.fallback(v.optional(needSchema), undefined),
  size: v.fallback(text, ''),
  zone: v.fallback(v.optional(text), undefined),
  from: v.fallback(v.union([v.literal(''), isoDay]), ''),
  mix: v.fallback(v.picklist(MIX_IDS), 'potting'),
  isUnderRoof: v.fallback(v.boolean(), false),
});

export interface KeptRow {
  readonly row: RowText;
  /** Whether all that was kept is in it. */
  readonly isWhole: boolean;
}

/** What of it can be read; the rest is as in an empty row. `zones`: those that there are. */
export function keptRowFrom(value: unknown, zones: readonly PlanZone[]): KeptRow {
  const isRecord = typeof value === 'object' && value !== null && !Array.isArray(value);
  const read = v.parse(rowSchema, isRecord ? value : {});
  const zone = zones.find(({ id }) => id === read.zone)?.id;
  const row: RowText = { ...read, zone, listed: read.listed, need: read.need };
  return { row, isWhole: sameData(row, value) };
}
