import type { GardenLine } from '../garden.ts';
import { elevationLossKpa } from './elevation.ts';
import { frictionCoefficient, frictionLossKpa } from './friction.ts';
import { hazenWilliamsC } from './hazen-williams-c.ts';
import { increasingRoot } from './increasing-root.ts';

export interface Feed {
  /** While water runs. */
  readonly sourceKpa: number;
  /** Tubes without emitters, one behind the other, all in front of the lines. One without a length costs nothing. */
  readonly solids: readonly Pick<GardenLine, 'lengthM' | 'insideDiameterMm' | 'riseMPerM'>[];
  /** What all lines take together at a pressure, L/h; never less at more pressure. */
  readonly flowLphAt: (kpa: number) => number;
}

/** The pressure is met to this share of the source's. */
const CLOSENESS = 1e-12;

/**
 * Pressure behind the solid lines that lead to a planting's emitters, kPa: the source's, less the climb, less the friction of the
 * whole flow (Hazen-Williams), which hangs on the pressure itself. 0 where the climb uses the pressure up: nothing flows.
 */
export function feedingPressureKpa({ sourceKpa, solids, flowLphAt }: Feed): number {
  let stillKpa = sourceKpa;
  let coefficient = 0;
  for (const { lengthM = 0, insideDiameterMm, riseMPerM } of solids) {
    stillKpa -= elevationLossKpa(riseMPerM * lengthM);
    coefficient += frictionCoefficient({ insideDiameterMm, lengthM, hazenWilliamsC: hazenWilliamsC(insideDiameterMm) });
  }
  if (coefficient === 0 || stillKpa <= 0) return Math.max(0, stillKpa);
  return increasingRoot({
    of: (kpa) => kpa - stillKpa + frictionLossKpa(coefficient, flowLphAt(kpa)),
    low: 0,
    high: stillKpa,
    tolerance: CLOSENESS * stillKpa,
  });
}
