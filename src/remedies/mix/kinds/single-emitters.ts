/** Emitters and micro-sprays that are set one by one: another flow, or another number of them. */
import type { Catalogue, SingleEmitter } from '../../../engine/line/catalogue.ts';
import { LINE_KINDS, type LineKind } from '../../../engine/line/line-kinds.ts';
import { toSi } from '../../../engine/units.ts';
import type { PlanLine } from '../../../plan/schema/plan-schema.ts';
import { emitterInPlan, isSameSize, labelled } from '../in-plan-units.ts';
import type { LaidPlanting, MixContext } from '../mix-context.ts';
import { type Goods, type MixCandidate, NO_GOODS } from '../remedy.ts';

/** Fewer and more than there are, in ways that can be spread evenly. */
const SHARES = [0.5, 1, 1.5, 2, 3] as const;

type SetLine = Extract<PlanLine, { kind: 'point' | 'spray' }>;

/** What such a line is made of, in the catalogue and in a remedy's goods; nothing where no emitter is set one by one. */
const SET_GOODS = {
  point: { sizes: 'pointEmitters', goods: 'emitters' },
  spray: { sizes: 'microSprays', goods: 'sprays' },
  dripline: undefined,
  solid: undefined,
} as const satisfies Readonly<
  Record<LineKind, { readonly sizes: keyof Catalogue; readonly goods: keyof Goods } | undefined>
>;

const isSet = (line: PlanLine): line is SetLine => SET_GOODS[line.kind] !== undefined;

export function singleEmitterCandidates(context: MixContext): readonly MixCandidate[] {
  return context.laid.flatMap((laid) => {
    const { line } = laid;
    if (!isSet(line)) return [];
    return context.catalogue[SET_GOODS[line.kind].sizes].flatMap((size) =>
      countsNear(line).flatMap((count) => reset(context, laid, line, size, count) ?? []),
    );
  });
}

function countsNear({ count }: SetLine): readonly number[] {
  return [...new Set(SHARES.map((share) => Math.max(1, Math.round(share * count))))];
}

function reset(
  { plan, zone }: MixContext,
  { planting, index }: LaidPlanting,
  line: SetLine,
  { emitter }: SingleEmitter,
  count: number,
): MixCandidate | undefined {
  const { units } = plan;
  const { nominalFlowLph: emitterFlowLph } = emitter;
  const isSameFlow = isSameSize(toSi(line.flow, 'emitterFlow', units), emitterFlowLph);
  if (isSameFlow && count === line.count) return undefined;
  const { emitter: _emitter, ...kept } = line;
  const flow = isSameFlow ? line.flow : labelled(emitterFlowLph, 'emitterFlow', units);
  const next: PlanLine = isSameFlow ? { ...line, count } : { ...kept, flow, count, ...emitterInPlan(emitter, units) };
  const isEachPlant = LINE_KINDS[line.kind].emitters === 'each-plant';
  const plants = isEachPlant && planting.extent.kind === 'canopy' ? planting.extent.count : undefined;
  // Emitters of the same flow that are there already can stay.
  const pieces = Math.max(0, isSameFlow ? count - line.count : count) * (plants ?? 1);
  const isPerPlant = plants !== undefined;
  const kind = SET_GOODS[line.kind].goods;
  return {
    changes: [{ kind, plantingId: planting.id, emitterFlowLph, count, isPerPlant }],
    goods: { ...NO_GOODS, [kind]: pieces },
    edits: [{ type: 'replace-line', zone: zone.id, planting: planting.id, index, line: next }],
  };
}
