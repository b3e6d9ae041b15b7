import { requireNumber } from '../require-number.ts';

export interface TankInput {
  readonly capacityL: number;
  /** In the tank before the first day; what is above the capacity overflows that day. */
  readonly startL: number;
  /** Runoff that arrives on each day, L. */
  readonly roofL: ArrayLike<number>;
  /** Water wanted on each day, L. */
  readonly drawL: ArrayLike<number>;
  /** Whether the mains make up what the tank cannot give. */
  readonly mainsTopUp: boolean;
}

/** One value a day. Every day: roof + mains - supplied - overflow = level - level of the day before. */
export interface TankSeason {
  /** At the day's end, 0..capacity. */
  readonly levelL: Float64Array;
  readonly overflowL: Float64Array;
  /** What the mains added. */
  readonly mainsL: Float64Array;
  /** What was given of the draw, with the mains' help where there is any. */
  readonly suppliedL: Float64Array;
  /** What was wanted and not there. */
  readonly shortL: Float64Array;
  /** Index of the first day on which the tank alone did not have enough, or -1. */
  readonly firstDryDay: number;
}

/**
 * A rain tank from day to day. The day's runoff comes in, what is over the rim is lost, then the day's water is drawn:
 * yield after spillage, the more careful of the two usual conventions (Jenkins et al. 1978, from memory). Mains water
 * is added only as far as the draw needs it, so that the tank stays free for rain.
 *
 * Tank water is not for drinking; where the mains join, the water authority's backflow rules apply.
 *
 * @throws RangeError where a value is negative or the draws and inflows are not of the same days
 */
export function tankSeason({ capacityL, startL, roofL, drawL, mainsTopUp }: TankInput): TankSeason {
  requireTank({ capacityL, startL, roofL, drawL });
  const days = drawL.length;
  const daily = () => new Float64Array(days);
  const season = { levelL: daily(), overflowL: daily(), mainsL: daily(), suppliedL: daily(), shortL: daily() };
  let level = startL;
  let firstDryDay = -1;
  for (let day = 0; day < days; day += 1) {
    const held = level + (roofL[day] as number);
    const kept = Math.min(held, capacityL);
    const draw = drawL[day] as number;
    const fromTank = Math.min(kept, draw);
    const missing = draw - fromTank;
    if (missing > 0 && firstDryDay < 0) firstDryDay = day;
    level = kept - fromTank;
    season.levelL[day] = level;
    season.overflowL[day] = held - kept;
    season.mainsL[day] = mainsTopUp ? missing : 0;
    season.suppliedL[day] = mainsTopUp ? draw : fromTank;
    season.shortL[day] = mainsTopUp ? 0 : missing;
  }
  return { ...season, firstDryDay };
}

/** Refuses what no tank can be. */
export function requireTank({ capacityL, startL, roofL, drawL }: Omit<TankInput, 'mainsTopUp'>): void {
  requireNumber('capacity of the tank (L)', capacityL, { atLeast: 0 });
  requireNumber('water in the tank at the start (L)', startL, { atLeast: 0 });
  if (roofL.length !== drawL.length) {
    throw new RangeError(
      `Runoff is given for ${roofL.length} days and the draw for ${drawL.length}: they must be the same days.`,
    );
  }
  for (let day = 0; day < drawL.length; day += 1) {
    requireNumber(`runoff of day ${day + 1} (L)`, roofL[day] as number, { atLeast: 0 });
    requireNumber(`draw of day ${day + 1} (L)`, drawL[day] as number, { atLeast: 0 });
  }
}
