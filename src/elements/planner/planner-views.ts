import type { PlannerPart } from './show-part-event.ts';

/** What the planner shows, one at a time, in the order of its tabs. */
export const PLANNER_VIEWS = ['season', 'week', 'mix', 'garden', 'files'] as const;

export type PlannerView = (typeof PLANNER_VIEWS)[number];

/** The view that a part of the planner stands in. */
export const VIEW_OF_PART: Readonly<Record<PlannerPart, PlannerView>> = {
  grid: 'season',
  chart: 'season',
  trace: 'season',
  notices: 'season',
  week: 'week',
  mix: 'mix',
  garden: 'garden',
  files: 'files',
};

export function isPlannerView(name: string | null | undefined): name is PlannerView {
  return PLANNER_VIEWS.some((view) => view === name);
}

/** The views that a list such as `week season` names, in its order; all where it names none. */
export function viewsNamed(list: string | undefined): readonly PlannerView[] {
  const named = (list ?? '').split(/[\s,]+/).filter(isPlannerView);
  return named.length === 0 ? PLANNER_VIEWS : [...new Set(named)];
}
