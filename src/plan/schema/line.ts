/** A planting's drip line from a day to a day: several may lie at once. */
import * as v from 'valibot';
import type { LineKind } from '../../engine/line/line-kinds.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { TYPED_APPLICATIONS } from './application.ts';
import { fields } from './fields.ts';
import { quantity, range, whole } from './quantity.ts';
import { isoDay } from './text.ts';

const MOST_EMITTERS = 10_000;

/** How the tubing is laid: its length as measured, equal rows, or loops round each plant. */
function layoutSchema(system: UnitSystem) {
  return v.variant('kind', [
    fields({
      kind: v.literal('length'),
      length: quantity('length', system),
    }),
    fields({
      kind: v.literal('rows'),
      rows: whole(1, 1000, 'rows'),
      length: quantity('length', system),
    }),
    fields({
      kind: v.literal('loops'),
      perPlant: whole(1, 20, 'loops'),
      diameter: v.optional(quantity('diameter', system)),
    }),
  ]);
}

export function lineSchema(system: UnitSystem) {
  const days = { from: v.optional(isoDay), to: v.optional(isoDay) };
  const tube = {
    risePercent: v.optional(range(-100, 100, 'percent')),
    insideDiameter: v.optional(quantity('bore', system)),
  };
  const flow = quantity('emitterFlow', system);
  const hydraulics = {
    topology: v.optional(v.picklist(['dead-end', 'loop'])),
    slopeSide: v.optional(v.picklist(['level', 'uphill', 'downhill'])),
    ...tube,
    application: v.optional(v.variant('kind', TYPED_APPLICATIONS)),
    emitter: v.optional(
      v.variant('kind', [
        fields({
          kind: v.literal('compensating'),
          leastPressure: quantity('pressure', system),
        }),
        fields({
          kind: v.literal('plain'),
          exponent: range(0.1, 1),
        }),
      ]),
    ),
  };
  const kinds = {
    dripline: fields({
      kind: v.literal('dripline'),
      ...days,
      flow,
      spacing: quantity('spacing', system),
      layout: layoutSchema(system),
      ...hydraulics,
    }),
    point: fields({
      kind: v.literal('point'),
      ...days,
      flow,
      count: whole(1, MOST_EMITTERS, 'emitters'),
      ...hydraulics,
    }),
    spray: fields({
      kind: v.literal('spray'),
      ...days,
      flow,
      count: whole(1, MOST_EMITTERS, 'microSprays'),
      ...hydraulics,
    }),
    solid: fields({
      kind: v.literal('solid'),
      ...days,
      length: v.optional(quantity('length', system)),
      ...tube,
    }),
  } satisfies Readonly<Record<LineKind, unknown>>;
  return v.variant('kind', Object.values(kinds));
}
