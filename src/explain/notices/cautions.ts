import type { NoticeKind } from './notice.ts';

/** The usual cautions of the trade, by id; their words are made where they are shown. */
export const CAUTION_IDS = ['backflow', 'tank', 'digging', 'codes', 'promise'] as const;

export type CautionId = (typeof CAUTION_IDS)[number];

/** Pipe that is laid or fed anew joins the drinking water and goes into the ground. */
const NEW_PIPE = ['backflow', 'digging', 'codes'] as const;

const CAUTIONS: Readonly<Record<NoticeKind, readonly CautionId[]>> = {
  'no-line': NEW_PIPE,
  dry: ['promise'],
  short: ['promise'],
  'never-enough': ['promise'],
  over: ['promise'],
  closed: ['promise'],
  'hand-set': [],
  'too-long': ['codes'],
  'refill-weekly': ['promise'],
  'crop-early': [],
  'crop-past': [],
  'out-of-season': [],
  'line-too-long': NEW_PIPE,
  'pressure-low': ['backflow', 'codes'],
  'flow-too-great': NEW_PIPE,
  'flow-together': [],
  'window-too-short': ['codes'],
  'allowance-exceeded': ['codes'],
  'tank-dry': ['tank', 'backflow', 'codes'],
  'emitters-far-apart': ['promise'],
  'line-downhill': ['promise'],
  'no-climate': [],
};

/** The cautions that belong beside a notice of a kind, most pressing first. */
export function cautionsOf(kind: NoticeKind): readonly CautionId[] {
  return CAUTIONS[kind];
}
