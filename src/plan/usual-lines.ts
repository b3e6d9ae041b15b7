/** The line that usually waters a planting of a size: a start that is shown as assumed until somebody says what lies there. */
import { fromSi, toSi, type UnitSystem } from '../engine/units.ts';
import type { PlanLine, PlanPlanting } from './schema/plan-schema.ts';

type Extent = PlanPlanting['extent'];

/** How a planting gets its water. */
export const LINE_WAYS = ['rows', 'loops', 'points', 'spray', 'solid', 'none'] as const;

export type LineWay = (typeof LINE_WAYS)[number];

/** Between rows of dripline in a bed, 16 in: common practice, no source (12 to 18 in loam). */
const BETWEEN_ROWS_M = 16 * 0.0254;

/** A pot this wide takes two emitters: common practice, no source. */
const WIDE_POT_M = 18 * 0.0254;

/** Usual goods of either system: 0.6 gph (2.3 L/h) emitters at 12 in (30 cm). Common practice, no source. */
const GOODS = {
  us: { dripFlow: 0.6, spacing: 12, pointFlow: 0.5, sprayFlow: 10 },
  metric: { dripFlow: 2.3, spacing: 30, pointFlow: 2, sprayFlow: 40 },
} as const;

/** gph and L/h: what an emitter of a usual dripline gives. */
export const USUAL_EMITTER = { us: GOODS.us.dripFlow, metric: GOODS.metric.dripFlow } as const;

/** Rows in a bed or a box, a loop round each shrub, an emitter in each pot. */
export function usualWay(extent: Extent, isContainer: boolean): LineWay {
  if (isContainer && extent.kind === 'canopy') return 'points';
  return extent.kind === 'canopy' ? 'loops' : 'rows';
}

/** `goods`: a line whose emitters and spacing are taken over, where they go with the way. Empty for no line. */
export function linesFor(way: LineWay, extent: Extent, units: UnitSystem, goods?: PlanLine): readonly PlanLine[] {
  const usual = GOODS[units];
  const drip = goods?.kind === 'dripline' ? goods : { flow: usual.dripFlow, spacing: usual.spacing };
  const tube = { kind: 'dripline', flow: drip.flow, spacing: drip.spacing } as const;
  switch (way) {
    case 'rows':
      return [{ ...tube, layout: { kind: 'rows', ...rowsIn(extent, units) } }];
    case 'loops':
      return [{ ...tube, layout: { kind: 'loops', perPlant: 1 } }];
    case 'points':
      return [
        {
          kind: 'point',
          flow: goods?.kind === 'point' ? goods.flow : usual.pointFlow,
          count: pointsFor(extent, units),
        },
      ];
    case 'spray':
      return [{ kind: 'spray', flow: usual.sprayFlow, count: 1 }];
    case 'solid':
      return [{ kind: 'solid' }];
    case 'none':
      return [];
  }
}

/** The way that a line lies; of several the first. */
export function wayOf(lines: readonly PlanLine[]): LineWay {
  const [line] = lines;
  if (line === undefined) return 'none';
  switch (line.kind) {
    case 'dripline':
      return line.layout.kind === 'loops' ? 'loops' : 'rows';
    case 'point':
      return 'points';
    case 'spray':
      return 'spray';
    case 'solid':
      return 'solid';
  }
}

/** As many rows as the width takes, along the longer side. */
export function rowsIn(extent: Extent, units: UnitSystem): { readonly rows: number; readonly length: number } {
  if (extent.kind === 'rows') return { rows: extent.rows, length: extent.length };
  const [along, across] = sidesM(extent, units);
  return {
    rows: Math.max(1, Math.round(across / BETWEEN_ROWS_M)),
    length: Math.round(10 * fromSi(along, 'length', units)) / 10,
  };
}

/** Longer side first; what has no sides is taken as square, plants as standing in a row. */
export function sidesM(extent: Exclude<Extent, { kind: 'rows' }>, units: UnitSystem): readonly [number, number] {
  switch (extent.kind) {
    case 'bed': {
      const sides = [toSi(extent.length, 'length', units), toSi(extent.width, 'length', units)] as const;
      return [Math.max(...sides), Math.min(...sides)];
    }
    case 'area': {
      const side = Math.sqrt(toSi(extent.area, 'area', units));
      return [side, side];
    }
    case 'canopy': {
      const across = toSi(extent.diameter, 'diameter', units);
      return [extent.count * across, across];
    }
  }
}

/** For each pot, of which a wide one takes two. */
function pointsFor(extent: Extent, units: UnitSystem): number {
  if (extent.kind !== 'canopy') return 1;
  return toSi(extent.diameter, 'diameter', units) >= WIDE_POT_M ? 2 : 1;
}
