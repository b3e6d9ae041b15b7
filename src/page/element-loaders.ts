/** What defines each tag, fetched when the first one of that name is on the page. */
export const ELEMENT_LOADERS: ReadonlyMap<string, () => Promise<unknown>> = new Map<string, () => Promise<unknown>>([
  ['runnel-chart', () => import('../elements/chart/define.ts')],
  ['runnel-files', () => import('../elements/files/define.ts')],
  ['runnel-garden', () => import('../elements/garden/define.ts')],
  ['runnel-grid', () => import('../elements/grid/define.ts')],
  ['runnel-mix', () => import('../elements/mix/define.ts')],
  ['runnel-notices', () => import('../elements/notices/define.ts')],
  ['runnel-plan', () => import('../elements/plan/define.ts')],
  ['runnel-planner', () => import('../elements/planner/define.ts')],
  ['runnel-trace', () => import('../elements/trace/define.ts')],
  ['runnel-week', () => import('../elements/week/define.ts')],
]);
