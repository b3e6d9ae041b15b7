/** Volumes of a week added up: over the plantings of a zone, or over the zones of the garden. */
import { SUPPLY_FIELDS } from '../../../engine/season/season.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { volume } from '../trace-value.ts';

export type SupplyField = keyof typeof SUPPLY_FIELDS;

/** What is added up, and what it comes to. */
export interface Sum {
  /** `planting`, `zone`. */
  readonly of: string;
  readonly parts: readonly { readonly label: string; at(field: SupplyField): number }[];
  at(field: SupplyField): number;
}

interface FieldWords {
  readonly id: string;
  readonly title: string;
  readonly says: string;
}

const FIELD_WORDS: Readonly<Record<SupplyField, FieldWords>> = {
  litres: { id: 'litres', title: 'Water applied', says: 'What the meter would show.' },
  rainLitres: { id: 'rain-litres', title: 'Rain that fell', says: 'All rain on the ground of the plantings.' },
  demandLitres: { id: 'demand-litres', title: 'Demand', says: 'What the plants would use if they never went short.' },
  usedLitres: { id: 'used-litres', title: 'Water used', says: 'What the plants took up.' },
  rainStayedLitres: {
    id: 'rain-stayed-litres',
    title: 'Rain that stayed',
    says: 'Rain that stayed where roots can reach it.',
  },
  irrigationStayedLitres: {
    id: 'irrigation-stayed-litres',
    title: 'Irrigation that stayed',
    says: 'Irrigation that stayed where roots can reach it.',
  },
  drainedLitres: {
    id: 'drained-litres',
    title: 'Drained below the roots',
    says: 'Rain and irrigation beyond what the soil holds.',
  },
  lostLitres: {
    id: 'lost-litres',
    title: 'Lost on the way',
    says: 'Rain that dried off or ran off, and irrigation that fell unevenly.',
  },
  storageLitres: {
    id: 'storage-litres',
    title: 'Change of the water in the soil',
    says: 'Above zero the soil ends the week wetter than it began, below zero drier.',
  },
  neededLitres: {
    id: 'needed-litres',
    title: 'Net need',
    says: 'What had to reach the roots to bring every planting to its target.',
  },
};

export function sumSteps(sum: Sum): readonly TraceStep[] {
  return [...(Object.keys(SUPPLY_FIELDS) as SupplyField[]).map((field) => sumStep(sum, field)), closingStep(sum)];
}

function sumStep({ of, parts, at }: Sum, field: SupplyField): TraceStep {
  const { id, title, says } = FIELD_WORDS[field];
  return {
    id,
    title,
    says,
    formula: `sum over the ${of}s`,
    source: 'Definition',
    inputs: parts.map((part) => volume(part.label, part.at(field))),
    result: volume(title, at(field)),
  };
}

function closingStep({ at }: Sum): TraceStep {
  const named = (field: SupplyField): TraceValue => volume(FIELD_WORDS[field].title, at(field));
  return {
    id: 'closing',
    title: 'The water of the week adds up',
    says: 'All that came went somewhere: nothing is left over.',
    formula: 'left over = rain + water applied − used − drained − lost − change of the water in the soil',
    source: 'Conservation of water; FAO-56 eq. 85',
    inputs: (['rainLitres', 'litres', 'usedLitres', 'drainedLitres', 'lostLitres', 'storageLitres'] as const).map(
      named,
    ),
    result: volume(
      'Left over',
      at('rainLitres') + at('litres') - at('usedLitres') - at('drainedLitres') - at('lostLitres') - at('storageLitres'),
    ),
  };
}
