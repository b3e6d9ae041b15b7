/** What a pot, a basket or a box of a size holds. Forms of usual goods, from memory: what is printed on a pot is better. */
import { fromSi, toSi, type UnitSystem } from '../engine/units.ts';
import type { PlanPlanting } from './schema/plan-schema.ts';

type Container = NonNullable<PlanPlanting['container']>;

export type ContainerForm = 'pot' | 'basket';

/** A pot 0.85 of its width deep and 0.7 of it wide at its base; a basket like half a ball, filled to 0.8. Liters for a meter's width. */
const HOLDS_L: Readonly<Record<ContainerForm, number>> = { pot: 487, basket: 209 };

/** A box is as deep as it is wide, and no deeper than this, 12 in. */
const DEEPEST_BOX_M = 0.3048;

const L_PER_M3 = 1000;

/** `across`: width at the rim, as the plan's canopies are given. */
export function containerOf(
  form: ContainerForm,
  across: number,
  units: UnitSystem,
): Pick<Container, 'volume' | 'opening'> {
  const litres = HOLDS_L[form] * toSi(across, 'diameter', units) ** 3;
  return { volume: roundVolume(litres, units), opening: across };
}

/** Width at the rim of what holds so much, a whole inch or centimeter; `volume` and the result as the plan gives them. */
export function widthOf(form: ContainerForm, volume: number, units: UnitSystem): number {
  const acrossM = Math.cbrt(toSi(volume, 'volume', units) / HOLDS_L[form]);
  return Math.max(1, Math.round(fromSi(acrossM, 'diameter', units)));
}

/** Of one box, by the sides of its opening, m; the volume as the plan gives it. */
export function boxVolume(lengthM: number, widthM: number, units: UnitSystem): number {
  return roundVolume(lengthM * widthM * Math.min(lengthM, widthM, DEEPEST_BOX_M) * L_PER_M3, units);
}

const roundVolume = (litres: number, units: UnitSystem): number =>
  Math.max(0.1, Math.round(10 * fromSi(litres, 'volume', units)) / 10);
