/** A planting's drip line from a day on. */
import * as v from 'valibot';
import type { LineKind } from '../../engine/line/line-kinds.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { field, fields, maybe } from './fields.ts';
import { quantity, range, whole } from './quantity.ts';
import { isoDay } from './text.ts';

const MOST_EMITTERS = 10_000;

/** How the tubing is laid: its length as measured, equal rows, or loops round each plant. */
function layoutSchema(system: UnitSystem) {
  return v.variant(
    'kind',
    [
      fields('a layout by length', {
        kind: v.literal('length', 'length'),
        length: field(quantity('length', system), 'Length of all the dripline, as measured.'),
      }),
      fields('a layout in rows', {
        kind: v.literal('rows', 'rows'),
        rows: field(whole(1, 1000, 'rows'), 'Number of equal rows.'),
        length: field(quantity('length', system), 'Length of one row.'),
      }),
      fields('a layout in loops', {
        kind: v.literal('loops', 'loops'),
        perPlant: field(whole(1, 20, 'loops'), 'Loops of dripline round each plant.'),
        diameter: maybe(quantity('diameter', system), 'Across one loop. Left out: the canopy’s own diameter.'),
      }),
    ],
    'a layout: length, rows or loops',
  );
}

export function lineSchema(system: UnitSystem) {
  const from = maybe(isoDay, 'Day from which the line lies. Left out: the planting’s first day.');
  const flow = field(quantity('emitterFlow', system), 'Flow of one emitter.');
  const hydraulics = {
    topology: maybe(
      v.picklist(['dead-end', 'loop'], 'dead-end or loop'),
      'Fed from one end, or from both. Left out: dead-end.',
    ),
    slopeSide: maybe(
      v.picklist(['level', 'uphill', 'downhill'], 'level, uphill or downhill'),
      'Side of the plants on which the line lies. Left out: level.',
    ),
    risePercent: maybe(range(-100, 100, 'percent'), 'Rise along the line from its inlet; negative runs downhill.'),
    insideDiameter: maybe(quantity('bore', system), 'Inside diameter of the tubing. Left out: that of usual dripline.'),
    emitter: maybe(
      v.variant(
        'kind',
        [
          fields('a compensating emitter', {
            kind: v.literal('compensating', 'compensating'),
            leastPressure: field(quantity('pressure', system), 'Pressure from which the flow no longer changes.'),
          }),
          fields('a plain emitter', {
            kind: v.literal('plain', 'plain'),
            exponent: field(range(0.1, 1), 'Exponent x of flow = k pressure^x.'),
          }),
        ],
        'an emitter that is compensating or plain',
      ),
      'How the flow answers to pressure. Left out: compensating.',
    ),
  };
  const kinds = {
    dripline: fields('a dripline', {
      kind: v.literal('dripline', 'dripline'),
      from,
      flow,
      spacing: field(quantity('spacing', system), 'Distance between emitters along the line.'),
      layout: layoutSchema(system),
      ...hydraulics,
    }),
    point: fields('point emitters', {
      kind: v.literal('point', 'point'),
      from,
      flow,
      count: field(
        whole(1, MOST_EMITTERS, 'emitters'),
        'Emitters at each plant where plants are counted, else in the whole planting.',
      ),
      ...hydraulics,
    }),
    spray: fields('micro-sprays', {
      kind: v.literal('spray', 'spray'),
      from,
      flow,
      count: field(whole(1, MOST_EMITTERS, 'microSprays'), 'Micro-sprays in the whole planting.'),
      ...hydraulics,
    }),
    solid: fields('solid line', { kind: v.literal('solid', 'solid'), from }),
  } satisfies Readonly<Record<LineKind, unknown>>;
  return v.variant('kind', Object.values(kinds), 'a line: dripline, point, spray or solid');
}
