/** Days on which a planting found less water than it would use. */
import type { StoreKind } from '../step-kinds.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { days, depth, input } from '../trace-value.ts';
import type { CellDay, PlantingCell } from './planting-cell.ts';
import { broughtInputs, rootedParts, startInputs, storeKind } from './stores.ts';

/** Of a pot: differences below this are rounding. */
const POT_ROUNDING_MM = 1e-9;

export function shortDaysStep(cell: PlantingCell): TraceStep {
  // A day at rest is not counted.
  const daily = cell.daily.filter(({ index }) => !cell.days.demand.rest?.[index]);
  const kind = storeKind(cell);
  const { isShortOn, beyondMm, inputs } = SHORT[kind];
  const short = daily.filter(isShortOn);
  const some = short.length === 0 ? 'none' : 'some';
  const driest = daily.slice(0, 1).map((first) => daily.reduce((a, b) => (beyondMm(b) > beyondMm(a) ? b : a), first));
  return {
    id: 'short-days',
    variant: kind === 'one' ? some : `${kind}-${some}`,
    source: ['FAO-56 eq. 84'],
    inputs: (short.length > 0 ? short : driest).flatMap(inputs),
    result: days(cell.at('shortDays')),
  };
}

interface ShortRule {
  isShortOn(of: CellDay): boolean;
  /** By which the driest day is found. */
  beyondMm(of: CellDay): number;
  inputs(of: CellDay): readonly TraceValue[];
}

const rawInput = ({ day, rawMm }: CellDay) => input({ id: 'day-readily-available', day }, depth(rawMm));

/** After what came: of the part that is less dry, of those that its roots are in. */
const leastDryMm = (of: CellDay) => Math.min(...rootedParts(of).map((part) => of[part].wateredMm));

const SHORT: Readonly<Record<StoreKind, ShortRule>> = {
  one: {
    isShortOn: ({ isShort }) => isShort,
    beyondMm: ({ wateredMm, rawMm }) => wateredMm - rawMm,
    inputs: (of) => [
      input({ id: 'day-depletion-start', day: of.day }, depth(of.startMm)),
      ...broughtInputs(of),
      rawInput(of),
    ],
  },
  part: {
    isShortOn: ({ isShort }) => isShort,
    beyondMm: (of) => leastDryMm(of) - of.rawMm,
    inputs: (of) => [...startInputs(of, rootedParts(of)), ...broughtInputs(of), rawInput(of)],
  },
  pot: {
    isShortOn: ({ etcMm, usedMm }) => usedMm < etcMm - POT_ROUNDING_MM,
    beyondMm: ({ etcMm, usedMm }) => etcMm - usedMm,
    inputs: ({ day, etcMm, usedMm }) => [
      input({ id: 'day-demand', day }, depth(etcMm)),
      input({ id: 'day-used', day }, depth(usedMm)),
    ],
  },
};
