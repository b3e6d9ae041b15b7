/** What ground and pots do with water: a day of the root zone, how wide emitters wet it, how deep a run does. */
export { wettedShare } from '../line/wetted-share.ts';
export { type WettingEmitter, wettedWidthM } from '../line/wetted-width.ts';
export { type Mulch, mulchedCoefficients } from '../plants/mulch.ts';
export { rootDepthM } from '../plants/root-depth.ts';
export { type ContainerDay, runContainer } from '../soil/container-day.ts';
export { type RootZoneDay, type RootZoneDayResult, rootZoneDay } from '../soil/root-zone-day.ts';
export { runStores, type Stores, type StoresDay, storesOf } from '../soil/two-stores.ts';
export { longestUsefulMinutes, type WettingRun, wettedDepthM } from './run-depth.ts';
export { type RunDepth, runDepths } from './run-depths.ts';
