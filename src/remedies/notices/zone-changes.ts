/** Changes of a zone's lines, shut-offs and rule, made as for a mixed zone, as remedies of a notice. */
import { CATALOGUE } from '../../engine/line/catalogue.data.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { cutOff } from '../mix/kinds/cut.ts';
import { driplineCandidates } from '../mix/kinds/dripline.ts';
import { ruleCandidates } from '../mix/kinds/rule.ts';
import { runCountCandidates } from '../mix/kinds/run-count.ts';
import { shutOffCandidates } from '../mix/kinds/shut-off.ts';
import { singleEmitterCandidates } from '../mix/kinds/single-emitters.ts';
import { type MixContext, mixContext } from '../mix/mix-context.ts';
import type { MixCandidate, MixChangeKind } from '../mix/remedy.ts';
import type { NoticeInPlan, RemedyCandidate, RemedyKind } from './remedy.ts';

type ZoneChangeKind = Extract<RemedyKind, 'other-emitters' | 'other-runs' | 'shut-off' | 'own-zone' | 'zone-rule'>;

const REMEDY_KINDS: Readonly<Record<MixChangeKind, ZoneChangeKind>> = {
  dripline: 'other-emitters',
  emitters: 'other-emitters',
  sprays: 'other-emitters',
  runs: 'other-runs',
  'shut-off': 'shut-off',
  cut: 'own-zone',
  rule: 'zone-rule',
};

/** The notice's zone, with the lines of the named plantings alone; of all where none is named. */
export function zoneContext(
  { plan, season, notice }: NoticeInPlan,
  plantingIds: readonly string[] = [],
): MixContext | undefined {
  if (notice.zoneId === undefined) return undefined;
  const context = mixContext(plan, season, notice.zoneId, CATALOGUE);
  if (plantingIds.length === 0) return context;
  return { ...context, laid: context.laid.filter(({ planting }) => plantingIds.includes(planting.id)) };
}

/** Every flow, spacing and number of emitters, and one run more or less. */
export function lineChanges(context: MixContext): readonly RemedyCandidate[] {
  return [...runCountCandidates(context), ...singleEmitterCandidates(context), ...driplineCandidates(context)].flatMap(
    remedyOf,
  );
}

export function shutOffs(context: MixContext): readonly RemedyCandidate[] {
  return shutOffCandidates(context).flatMap(remedyOf);
}

export function rules(context: MixContext): readonly RemedyCandidate[] {
  return ruleCandidates(context).flatMap(remedyOf);
}

/** A zone of their own for the named plantings together, and for each; none that would take all the zone has. */
export function ownZones({ plan, zone }: MixContext, plantingIds: readonly string[]): readonly RemedyCandidate[] {
  const sets = [plantingIds, ...(plantingIds.length > 1 ? plantingIds.map((id) => [id]) : [])];
  return sets
    .filter((ids) => ids.length > 0 && ids.length < zone.plantings.length)
    .map((ids) => cutOff(plan, zone, ids))
    .flatMap(remedyOf);
}

function remedyOf({ changes, edits }: MixCandidate): readonly RemedyCandidate[] {
  const [change] = changes;
  const [only] = edits;
  if (change === undefined || only === undefined) return [];
  const kind = REMEDY_KINDS[change.kind];
  const edit: Edit = change.kind === 'cut' ? { type: 'together', action: 'split-zone', edits } : only;
  const planting = 'plantingId' in change ? { plantingId: change.plantingId } : {};
  return [{ kind, ...planting, change, edit }];
}
