/** A planting's drip line from a day on. */
import * as v from 'valibot';
import type { UnitSystem } from '../../engine/units.ts';
import { quantity, range, whole } from './quantity.ts';
import { isoDay } from './text.ts';

/** How the tubing is laid: its length as measured, equal rows, or loops round each plant. */
function layoutSchema(system: UnitSystem) {
  return v.variant(
    'kind',
    [
      v.strictObject({ kind: v.literal('length'), length: quantity('length', system) }),
      v.strictObject({ kind: v.literal('rows'), rows: whole(1, 1000, 'rows'), length: quantity('length', system) }),
      v.strictObject({
        kind: v.literal('loops'),
        perPlant: whole(1, 20, 'loops'),
        /** Left out: the canopy's own diameter. */
        diameter: v.optional(quantity('diameter', system)),
      }),
    ],
    'a layout: length, rows or loops',
  );
}

export function lineSchema(system: UnitSystem) {
  /** Left out: from the planting's first day. */
  const from = v.optional(isoDay);
  const hydraulics = {
    topology: v.optional(v.picklist(['dead-end', 'loop'], 'dead-end or loop')),
    slopeSide: v.optional(v.picklist(['level', 'uphill', 'downhill'], 'level, uphill or downhill')),
    /** Rise along the line from its inlet; negative runs downhill. */
    risePercent: v.optional(range(-100, 100, '%')),
    insideDiameter: v.optional(quantity('bore', system)),
    emitter: v.optional(
      v.variant(
        'kind',
        [
          v.strictObject({ kind: v.literal('compensating'), leastPressure: quantity('pressure', system) }),
          v.strictObject({ kind: v.literal('plain'), exponent: range(0.1, 1) }),
        ],
        'an emitter that is compensating or plain',
      ),
    ),
  };
  return v.variant(
    'kind',
    [
      v.strictObject({
        kind: v.literal('dripline'),
        from,
        flow: quantity('emitterFlow', system),
        spacing: quantity('spacing', system),
        layout: layoutSchema(system),
        ...hydraulics,
      }),
      v.strictObject({
        kind: v.literal('point'),
        from,
        flow: quantity('emitterFlow', system),
        /** For each plant where plants are counted, else for the whole planting. */
        count: whole(1, 10_000, 'emitters'),
        ...hydraulics,
      }),
      v.strictObject({
        kind: v.literal('spray'),
        from,
        flow: quantity('emitterFlow', system),
        count: whole(1, 10_000, 'micro-sprays'),
        ...hydraulics,
      }),
      v.strictObject({ kind: v.literal('solid'), from }),
    ],
    'a line: dripline, point, spray or solid',
  );
}
