/** What defines each tag, fetched when the first one of that name is on the page. */
const LOADERS = {
  chart: () => import('../elements/chart/define.ts'),
  files: () => import('../elements/files/define.ts'),
  garden: () => import('../elements/garden/define.ts'),
  grid: () => import('../elements/grid/define.ts'),
  mix: () => import('../elements/mix/define.ts'),
  notices: () => import('../elements/notices/define.ts'),
  plan: () => import('../elements/plan/define.ts'),
  planner: () => import('../elements/planner/define.ts'),
  start: () => import('../elements/start/define.ts'),
  trace: () => import('../elements/trace/define.ts'),
  weather: () => import('../elements/weather/define.ts'),
  week: () => import('../elements/week/define.ts'),
};

export const ELEMENT_LOADERS: ReadonlyMap<string, () => Promise<unknown>> = new Map(
  Object.entries(LOADERS).map(([name, load]) => [`runnel-${name}`, load]),
);
