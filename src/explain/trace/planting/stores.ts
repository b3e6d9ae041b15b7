/** Days of ground that is wetted in part, and of pots, through the balance. */
import type { GroundPart } from '../label-about.ts';
import type { StoreKind } from '../step-kinds.ts';
import type { TraceSource, TraceStep, TraceValue } from '../trace-step.ts';
import { count, depth, input } from '../trace-value.ts';
import { type CellDay, isParted, type PlantingCell } from './planting-cell.ts';
import { shareInput } from './wetted.ts';

export const ORDER_OF_DAY: readonly TraceSource[] = [
  'FAO-56 eq. 85, 88',
  { id: 'order-of-day', cite: 'FAO-56 Example 38' },
];

const PARTS = ['wetted', 'dry'] as const;

export function storeKind(cell: PlantingCell): StoreKind {
  if (cell.planting.container !== undefined) return 'pot';
  return isParted(cell) ? 'part' : 'one';
}

/** How a day's use is drawn from both parts, and how dry it leaves one of them. */
export function partSteps(cell: PlantingCell, of: CellDay): readonly TraceStep[] {
  return PARTS.map((part) => ({
    id: 'store-day',
    day: of.day,
    part,
    variant: of.isWettedAlone ? 'alone' : 'shared',
    source: [...ORDER_OF_DAY, { id: 'choice' }],
    inputs: [...partInputs(cell, of), drawnInput(of, part)],
    result: depth(of[part].endMm),
  }));
}

/** All that decides what each part gives on a day. */
function partInputs(cell: PlantingCell, of: CellDay): readonly TraceValue[] {
  const { day, etcMm, rawMm, tawMm } = of;
  return [
    input({ id: 'day-demand', day }, depth(etcMm)),
    ...shareInput(cell),
    input('available-water', depth(tawMm)),
    input({ id: 'day-readily-available', day }, depth(rawMm)),
    ...startInputs(of, PARTS),
    ...broughtInputs(of),
  ];
}

function drawnInput({ day, ...of }: CellDay, part: GroundPart): TraceValue {
  return input({ id: 'day-drawn', day, part }, depth(of[part].fromMm));
}

export function drawnInputs(of: CellDay): readonly TraceValue[] {
  return PARTS.map((part) => drawnInput(of, part));
}

/** What comes to the wetted part; to the other, rain alone. */
export function broughtInputs({ day, soakedMm, wetted }: CellDay): readonly TraceValue[] {
  return [
    input({ id: 'day-rain-soaked', day }, depth(soakedMm)),
    input({ id: 'day-irrigation', day }, depth(wetted.irrigationMm)),
  ];
}

/** Parts of the ground that its roots are in. */
export function rootedParts({ isWettedAlone }: CellDay): readonly GroundPart[] {
  return isWettedAlone ? ['wetted'] : PARTS;
}

export function startInputs({ day, ...of }: CellDay, parts: readonly GroundPart[]): readonly TraceValue[] {
  return parts.map((part) => input({ id: 'day-part-depletion', day, part }, depth(of[part].startMm)));
}

export function endInputs({ day, ...of }: CellDay, parts: readonly GroundPart[]): readonly TraceValue[] {
  return parts.map((part) => input({ id: 'day-part-end', day, part }, depth(of[part].endMm)));
}

/** Of both parts: before, what was drawn and what came. */
export function drainedPartInputs(of: CellDay): readonly TraceValue[] {
  return [...startInputs(of, PARTS), ...drawnInputs(of), ...broughtInputs(of)];
}

/** Of all the ground, at the end of its last day in the week. */
export function meanStep(cell: PlantingCell, of: CellDay): TraceStep {
  return {
    id: 'day-balance',
    day: of.day,
    variant: 'part',
    source: [{ id: 'definition' }],
    inputs: [...endInputs(of, PARTS), ...shareInput(cell)],
    result: depth(of.endMm),
  };
}

export const POT_SOURCE: readonly TraceSource[] = ['FAO-56 eq. 84–88, Example 38'];

/** In as many parts as a day has runs: irrigation comes first, then rain beside what plants use. */
export function potStep(of: CellDay): TraceStep {
  return {
    id: 'day-balance',
    day: of.day,
    variant: 'pot',
    source: POT_SOURCE,
    inputs: [...potInputs(of), input({ id: 'day-used', day: of.day }, depth(of.usedMm))],
    result: depth(of.endMm),
  };
}

export function potInputs({ day, startMm, etcMm, rawMm, tawMm, parts, soakedMm, irrigationMm }: CellDay) {
  return [
    input({ id: 'day-depletion-start', day }, depth(startMm)),
    input({ id: 'day-demand', day }, depth(etcMm)),
    input({ id: 'day-readily-available', day }, depth(rawMm)),
    input({ id: 'day-available', day }, depth(tawMm)),
    input({ id: 'day-runs', day }, count(parts)),
    input({ id: 'day-rain-soaked', day }, depth(soakedMm)),
    input({ id: 'day-irrigation', day }, depth(irrigationMm)),
  ];
}
