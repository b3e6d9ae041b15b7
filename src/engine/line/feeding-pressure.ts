import type { GardenLine } from '../garden.ts';
import { elevationLossKpa } from './elevation.ts';
import { FRICTION_EXPONENT, frictionCoefficient, frictionLossKpa } from './friction.ts';
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

export interface Fed {
  /** At the inlet of the lines. */
  readonly kpa: number;
  /** Of what the lines would take at that pressure, what the tubes bring, 0..1. */
  readonly share: number;
}

/** The pressure is met to this share of the source's. */
const CLOSENESS = 1e-12;

/** As good as none, and still more than an outlet counts as dry with. */
const LEAST_KPA = 1e-200;

/**
 * What the solid lines that lead to a planting's emitters leave of the source's pressure: less the climb, less the friction of the whole flow
 * (Hazen-Williams), which hangs on the pressure itself. 0 where the climb uses the pressure up: nothing flows.
 *
 * Lines that fall run by their fall, even with next to no pressure at their inlet. Where that would be more than friction lets through, their
 * emitters let air in: they do not suck (common practice, no source), and share what the source's pressure alone presses through the
 * tubes, each by what it would take.
 */
export function feedingPressure({ sourceKpa, solids, flowLphAt }: Feed): Fed {
  let stillKpa = sourceKpa;
  let coefficient = 0;
  for (const { lengthM = 0, insideDiameterMm, riseMPerM } of solids) {
    stillKpa -= elevationLossKpa(riseMPerM * lengthM);
    coefficient += frictionCoefficient({ insideDiameterMm, lengthM, hazenWilliamsC: hazenWilliamsC(insideDiameterMm) });
  }
  if (coefficient === 0 || stillKpa <= 0) return { kpa: Math.max(0, stillKpa), share: 1 };
  const most = (stillKpa / coefficient) ** (1 / FRICTION_EXPONENT) / flowLphAt(LEAST_KPA);
  if (most < 1) return { kpa: LEAST_KPA, share: most };
  const kpa = increasingRoot({
    of: (kpa) => kpa - stillKpa + frictionLossKpa(coefficient, flowLphAt(kpa)),
    low: 0,
    high: stillKpa,
    tolerance: CLOSENESS * stillKpa,
  });
  return { kpa, share: 1 };
}
