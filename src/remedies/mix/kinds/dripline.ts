/** Another dripline in the place of the one that lies: every flow and spacing of the catalogue. */
import type { GardenLine } from '../../../engine/garden.ts';
import type { Catalogue, Dripline } from '../../../engine/line/catalogue.ts';
import { toSi } from '../../../engine/units.ts';
import type { Plan, PlanLine, PlanPlanting } from '../../../plan/schema/plan-schema.ts';
import { seasonDays } from '../../../plan/season-weeks.ts';
import { plantingOf } from '../../../plan/to-garden/planting.ts';
import { boreInPlan, emitterInPlan, isSameSize, labelled } from '../in-plan-units.ts';
import type { LaidPlanting, MixContext } from '../mix-context.ts';
import { type MixCandidate, NO_GOODS } from '../remedy.ts';

type PlanDripline = Extract<PlanLine, { kind: 'dripline' }>;

export function driplineCandidates(context: MixContext): readonly MixCandidate[] {
  const sizes = driplineSizes(context.catalogue);
  return context.laid.flatMap((laid) => sizes.flatMap((size) => replaceDripline(context, laid, size) ?? []));
}

export interface DriplineSize {
  readonly dripline: Dripline;
  readonly spacingM: number;
}

export function driplineSizes({ driplines }: Catalogue): readonly DriplineSize[] {
  return driplines.flatMap((dripline) => dripline.spacingsM.map((spacingM) => ({ dripline, spacingM })));
}

/** Nothing where no dripline lies, or this is the one that does. */
export function replaceDripline(
  { plan, zone, catalogue }: Pick<MixContext, 'plan' | 'zone' | 'catalogue'>,
  { planting, line, index }: LaidPlanting,
  { dripline, spacingM }: DriplineSize,
): MixCandidate | undefined {
  if (line.kind !== 'dripline') return undefined;
  const { units } = plan;
  const { emitter, nominalFlowLph } = { emitter: dripline.emitter, ...dripline.emitter };
  if (
    isSameSize(toSi(line.flow, 'emitterFlow', units), nominalFlowLph) &&
    isSameSize(toSi(line.spacing, 'spacing', units), spacingM)
  ) {
    return undefined;
  }
  const { emitter: _emitter, insideDiameter: _bore, ...kept } = line;
  const next: PlanDripline = {
    ...kept,
    flow: labelled(nominalFlowLph, 'emitterFlow', units),
    spacing: labelled(spacingM, 'spacing', units),
    ...emitterInPlan(emitter, units),
    ...boreInPlan(dripline.tubingId, catalogue, units),
  };
  const lengthM = driplineLengthM(plan, planting, index);
  return {
    changes: [{ kind: 'dripline', plantingId: planting.id, emitterFlowLph: nominalFlowLph, spacingM, lengthM }],
    goods: { ...NO_GOODS, driplineM: lengthM },
    edits: [{ type: 'replace-line', zone: zone.id, planting: planting.id, index, line: next }],
  };
}

/** Length of all the dripline of one of a planting's lines. */
export function driplineLengthM(plan: Plan, planting: PlanPlanting, index: number): number {
  return lineInGarden(plan, planting, index)?.lengthM ?? 0;
}

/** One of a planting's lines as the garden has it, its emitters counted. */
export function lineInGarden(
  { units, season, site }: Plan,
  planting: PlanPlanting,
  index: number,
): GardenLine | undefined {
  const line = planting.lines[index];
  if (line === undefined) return undefined;
  const { first, last } = seasonDays(season);
  const alone = { ...planting, lines: [line] };
  // A line hangs on neither pressure nor soil.
  const nothingElse = { pressures: [], frozenMonths: 0, soil: { texture: site.soil, availableWater: 0 } };
  return plantingOf(alone, { units, seasonFirst: first, seasonLast: last, ...nothingElse }).lines[0];
}
