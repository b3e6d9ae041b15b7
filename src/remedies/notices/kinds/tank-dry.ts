/** A tank that would have lasted; where none does, one that loses no rain. */
import { seasonSupply, type TankOutlook } from '../../../engine/supply/season-supply.ts';
import { tankSeason } from '../../../engine/supply/tank.ts';
import { fromSi, toSi } from '../../../engine/units.ts';
import type { NoticeInPlan, RemedyCandidate } from '../remedy.ts';

/** A size is given to so many digits: nobody orders a tank to the drop. */
const DIGITS = 3;

export function tankDryCandidates({ plan, season }: NoticeInPlan): readonly RemedyCandidate[] {
  const { tank: outlook, drawL } = seasonSupply(season);
  const tank = plan.supply?.tank;
  if (outlook === undefined || tank === undefined) return [];
  const startL = season.garden.supply.tank?.startLitres ?? 0;
  const size = outlook.sizeThatLasts;
  const neededL = size.lasts ? size.capacityL : fullestL(outlook, drawL, startL);
  const capacity = roundedUp(fromSi(neededL, 'volume', plan.units));
  return [
    {
      kind: 'larger-tank',
      capacityLitres: toSi(capacity, 'volume', plan.units),
      capacityLitresBefore: outlook.capacityL,
      edit: { type: 'change-supply', change: { tank: { ...tank, capacity } } },
    },
  ];
}

/** The fullest that a tank without a rim would ever be, L, before the day's draw. */
function fullestL({ roofL }: TankOutlook, drawL: Float64Array, startL: number): number {
  const { levelL, suppliedL } = tankSeason({
    capacityL: Number.MAX_SAFE_INTEGER,
    startL,
    roofL,
    drawL,
    mainsTopUp: false,
  });
  return levelL.reduce((most, level, day) => Math.max(most, level + (suppliedL[day] as number)), startL);
}

function roundedUp(value: number): number {
  if (value === 0) return 0;
  const step = 10 ** (Math.floor(Math.log10(value)) - DIGITS + 1);
  return Number((Math.ceil(value / step - 1e-9) * step).toPrecision(DIGITS + 1));
}
