/** Volumes of a week added up: over the plantings of a zone, or over the zones of the garden. */
import { SUPPLY_FIELDS } from '../../../engine/season/season.ts';
import type { StepKinds } from '../step-kinds.ts';
import type { TraceStep } from '../trace-step.ts';
import { input, volume } from '../trace-value.ts';

export type SupplyField = keyof typeof SUPPLY_FIELDS;

/** What is added up, and what it comes to. */
export interface Sum {
  readonly of: 'zone' | 'garden';
  /** The plantings of a zone, the zones of a garden. */
  readonly parts: readonly { readonly name: string; at(field: SupplyField): number }[];
  at(field: SupplyField): number;
}

const STEP_IDS = {
  litres: 'litres',
  rainLitres: 'rain-litres',
  demandLitres: 'demand-litres',
  usedLitres: 'used-litres',
  rainStayedLitres: 'rain-stayed-litres',
  irrigationStayedLitres: 'irrigation-stayed-litres',
  drainedLitres: 'drained-litres',
  lostLitres: 'lost-litres',
  storageLitres: 'storage-litres',
  neededLitres: 'needed-litres',
} as const satisfies Record<SupplyField, keyof StepKinds>;

export function sumSteps(sum: Sum): readonly TraceStep[] {
  return [...(Object.keys(SUPPLY_FIELDS) as SupplyField[]).map((field) => sumStep(sum, field)), closingStep(sum)];
}

/** What the parts of a sum are. */
const PART_LABELS = { zone: 'planting', garden: 'zone' } as const;

function sumStep({ of, parts, at }: Sum, field: SupplyField): TraceStep {
  return {
    id: STEP_IDS[field],
    variant: of,
    source: [{ id: 'definition' }],
    inputs: parts.map((part) => input({ id: PART_LABELS[of], name: part.name }, volume(part.at(field)))),
    result: volume(at(field)),
  };
}

const CLOSING = ['rainLitres', 'litres', 'usedLitres', 'drainedLitres', 'lostLitres', 'storageLitres'] as const;

function closingStep({ of, at }: Sum): TraceStep {
  return {
    id: 'closing',
    variant: of,
    source: [{ id: 'conservation-of-water' }, 'FAO-56 eq. 85'],
    inputs: CLOSING.map((field) => input(STEP_IDS[field], volume(at(field)))),
    result: volume(
      at('rainLitres') + at('litres') - at('usedLitres') - at('drainedLitres') - at('lostLitres') - at('storageLitres'),
    ),
  };
}
