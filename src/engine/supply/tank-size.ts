import { requireTank, type TankInput } from './tank.ts';

export type TankSize =
  /** The smallest tank with which the season never lacks water, L. */
  | { readonly lasts: true; readonly capacityL: number }
  /** No tank does: even if none of the rain overflowed, this much would be missing, from this day (index) on. */
  | { readonly lasts: false; readonly missingL: number; readonly firstDryDay: number };

/**
 * The size of tank that would have lasted the season without the mains, from the same start level, runoff and draw.
 *
 * Exact, by the sequent peak (Thomas and Burden 1963, from memory): the tank must hold the greatest fall below its rim
 * that the draws ever add up to. That is enough only if the water is there at all: an endless tank tells.
 *
 * @throws RangeError as `tankSeason` does
 */
export function tankSizeThatLasts({ startL, roofL, drawL }: Omit<TankInput, 'capacityL' | 'mainsTopUp'>): TankSize {
  requireTank({ capacityL: 0, startL, roofL, drawL });
  let belowRim = 0;
  let capacityL = 0;
  let endless = startL;
  let missingL = 0;
  let firstDryDay = -1;
  for (let day = 0; day < drawL.length; day += 1) {
    const roof = roofL[day] as number;
    const draw = drawL[day] as number;
    belowRim = Math.max(0, belowRim - roof) + draw;
    capacityL = Math.max(capacityL, belowRim);
    endless += roof - draw;
    if (endless < -missingL && firstDryDay < 0) firstDryDay = day;
    missingL = Math.max(missingL, -endless);
  }
  return firstDryDay < 0 ? { lasts: true, capacityL } : { lasts: false, missingL, firstDryDay };
}
