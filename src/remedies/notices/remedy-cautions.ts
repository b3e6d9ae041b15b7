import type { CautionId } from '../../explain/notices/cautions.ts';
import type { RemedyCandidate, RemedyKind } from './remedy.ts';

/** Pipe or a valve that is laid or fed anew joins the drinking water and goes into the ground. */
const NEW_PIPE = ['backflow', 'digging', 'codes'] as const;

/** What the work of each kind of remedy calls for, most pressing first (common practice, no source). */
const REMEDY_CAUTIONS: Readonly<Record<RemedyKind, readonly CautionId[]>> = {
  'close-loop': NEW_PIPE,
  'feed-middle': NEW_PIPE,
  'cut-in-two': NEW_PIPE,
  'split-zone': NEW_PIPE,
  'wider-spacing': ['digging', 'promise'],
  'closer-spacing': ['digging', 'promise'],
  uphill: ['digging', 'promise'],
  'other-emitters': ['digging', 'promise'],
  'other-runs': NEW_PIPE,
  'shut-off': NEW_PIPE,
  'own-zone': NEW_PIPE,
  'own-zone-and-days': NEW_PIPE,
  'zone-rule': ['promise'],
  'no-shut-off': ['backflow', 'codes'],
  'keep-watered': ['promise'],
  'more-room': ['promise'],
  'smaller-step': ['promise'],
  'more-starts': ['promise'],
  'other-days': ['codes'],
  'more-days': ['codes'],
  'days-by-month': ['codes'],
  'fewer-minutes': ['promise'],
  'shut-weeks': NEW_PIPE,
  'minutes-as-now': ['promise'],
  together: [],
  'larger-tank': ['tank', 'backflow', 'codes'],
};

/** Of several changes those of each. */
export function cautionsOf(change: RemedyCandidate): readonly CautionId[] {
  const parts = change.kind === 'together' ? change.parts : [change];
  return [...new Set(parts.flatMap(({ kind }) => REMEDY_CAUTIONS[kind]))];
}
