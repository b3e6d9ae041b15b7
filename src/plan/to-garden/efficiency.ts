/** Net depth over gross depth of a line, and what it rests on. */
import { applicationEfficiency, defaultEfficiency } from '../../engine/application/efficiency.ts';
import type { GardenLine, GardenPlanting, GardenZone } from '../../engine/garden.ts';
import { LINE_KINDS, type LineKind } from '../../engine/line/line-kinds.ts';
import type { PlanLine, PlanZone } from '../schema/plan-schema.ts';

/** The least that can be typed: it stands in where a quarter of the emitters stays dry, whose uniformity is 0. */
const LEAST_UNIFORMITY = 0.05;

export type Efficiency = Pick<GardenZone, 'efficiency' | 'efficiencyBasis'>;

type TypedApplication = NonNullable<Exclude<PlanLine, { kind: 'solid' }>['application']>;

function typedEfficiency({ kind, value }: TypedApplication): Efficiency {
  return kind === 'efficiency'
    ? { efficiency: value, efficiencyBasis: 'efficiency' }
    : { efficiency: applicationEfficiency({ distributionUniformity: value }), efficiencyBasis: kind };
}

/** Its own, else the zone's for all its lines, else the usual one of its kind. */
export function lineEfficiency(line: PlanLine, ofZone: Efficiency | undefined): Efficiency {
  const own = line.kind === 'solid' ? undefined : line.application;
  return (own && typedEfficiency(own)) ?? ofZone ?? usualEfficiency(line.kind);
}

function usualEfficiency(kind: LineKind): Efficiency {
  return { efficiency: defaultEfficiency(LINE_KINDS[kind].method), efficiencyBasis: 'default' };
}

/**
 * What a zone says for all its lines; undefined where each has the usual of its kind. `computedUniformity` is asked only where the
 * zone rests on it: where its lines have none to tell (no line, no water) they have the usual ones.
 */
export function zoneWideEfficiency(
  { application }: Pick<PlanZone, 'application'>,
  computedUniformity: () => number | undefined,
): Efficiency | undefined {
  if (application === undefined) return undefined;
  if (application.kind !== 'computed') return typedEfficiency(application);
  const computed = computedUniformity();
  if (computed === undefined) return undefined;
  const distributionUniformity = Math.max(LEAST_UNIFORMITY, computed);
  return {
    efficiency: applicationEfficiency({ distributionUniformity }),
    efficiencyBasis: 'computed-uniformity',
  };
}

/** Of a zone while none of its lines gives water: the mean of theirs; without a line what it says for all, else that of drip. */
export function restingEfficiency(plantings: readonly GardenPlanting[], ofZone: Efficiency | undefined): Efficiency {
  const lines = plantings.flatMap(({ lines }) => lines.filter(({ emitters }) => emitters > 0));
  const usual = ofZone ?? usualEfficiency('dripline');
  const own = lines.map(({ efficiency = usual.efficiency }: GardenLine) => efficiency);
  const [first = usual.efficiency] = own;
  const isOne = own.every((efficiency) => efficiency === first);
  const efficiency = isOne ? first : own.reduce((sum, each) => sum + each, 0) / own.length;
  return { ...usual, efficiency };
}
