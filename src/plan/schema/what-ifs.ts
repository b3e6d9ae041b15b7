/** Changes that are tried beside the plan, each with a name of its own: edits that nobody has made. */
import * as v from 'valibot';
import { fields } from './fields.ts';
import { whole } from './quantity.ts';
import { weekMinutes, weekRunSchema } from './records.ts';
import { departureFields } from './site.ts';
import { id, isoDay, name } from './text.ts';
import type { zoneSchema } from './zone.ts';

const MOST_WHAT_IFS = 50;
const MOST_EDITS = 500;
const MOST_INDEX = 10_000;

const index = whole(0, MOST_INDEX);

type Zone = v.InferOutput<ReturnType<typeof zoneSchema>>;
type Planting = Zone['plantings'][number];
interface OfZone {
  zone: string;
}
interface OfPlanting extends OfZone {
  planting: string;
}
interface OfWeek extends OfZone {
  week: string;
}

/** An edit that may be tried. Spelled out: inferred, it lies deeper than compilers of other projects follow. */
export type TriedEdit =
  | (OfPlanting & { type: 'change-planting'; change: { shutOff?: Planting['shutOff'] } })
  | (OfZone & { type: 'change-zone'; change: { rule?: Zone['rule'] } })
  | (OfPlanting & { type: 'replace-line'; index: number; line: Planting['lines'][number] })
  | (OfPlanting & { type: 'move-planting'; toZone: string; at?: number | undefined })
  | { type: 'add-zone'; zone: Zone; at?: number | undefined }
  | (OfWeek & { type: 'close-week'; closed: boolean })
  | (OfWeek & { type: 'set-minutes-run'; minutes: number })
  | (OfWeek & { type: 'set-week-run'; run: v.InferOutput<typeof weekRunSchema> })
  | { type: 'set-departure'; from: string; weeks: number; eto?: number | undefined; rain?: number | undefined };

export interface TriedEdits {
  name: string;
  edits: TriedEdit[];
}

/** `zone`: the schema of the plan's own zones, whose parts stand here too. */
export function whatIfsSchema(zone: ReturnType<typeof zoneSchema>): v.GenericSchema<TriedEdits[]> {
  const planting = zone.entries.plantings.pipe[0].item;
  const line = planting.entries.lines.pipe[0].item;
  const edit = v.variant('type', [
    fields({
      type: v.literal('change-planting'),
      zone: id,
      planting: id,
      change: fields({ shutOff: planting.entries.shutOff }),
    }),
    fields({ type: v.literal('change-zone'), zone: id, change: fields({ rule: zone.entries.rule }) }),
    fields({ type: v.literal('replace-line'), zone: id, planting: id, index, line }),
    fields({ type: v.literal('move-planting'), zone: id, planting: id, toZone: id, at: v.optional(index) }),
    // A zone is empty at first: plantings are moved into it.
    fields({
      type: v.literal('add-zone'),
      zone: fields({ ...zone.entries, plantings: v.pipe(v.array(planting), v.maxLength(0)) }),
      at: v.optional(index),
    }),
    fields({ type: v.literal('close-week'), zone: id, week: isoDay, closed: v.boolean() }),
    fields({ type: v.literal('set-minutes-run'), zone: id, week: isoDay, minutes: weekMinutes }),
    fields({ type: v.literal('set-week-run'), zone: id, week: isoDay, run: weekRunSchema }),
    fields({ type: v.literal('set-departure'), ...departureFields }),
  ]);
  const whatIf = fields({ name, edits: v.pipe(v.array(edit), v.minLength(1), v.maxLength(MOST_EDITS)) });
  return v.pipe(v.array(whatIf), v.maxLength(MOST_WHAT_IFS));
}
