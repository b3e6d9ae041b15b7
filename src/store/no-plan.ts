import { NOTHING_SELECTED, type PlanView } from './plan-view.ts';

/** What a view sees outside any plan, and what a plan starts from. */
export const NO_PLAN: PlanView = Object.freeze({
  status: 'empty',
  plan: undefined,
  documentId: undefined,
  season: undefined,
  faults: [],
  selection: NOTHING_SELECTED,
  canUndo: false,
  canRedo: false,
  readOnly: false,
  locale: 'en',
});
