/** How deep a run wets the ground, how long it is of use, and what to look for the day after. */
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

/** Depths in m, minutes. */
export interface DepthSaid {
  readonly depthM: number;
  readonly rootDepthM: number;
  readonly minutes: number;
  readonly usefulMinutes: number;
}

export const howDeep = {
  title: 'How deep, and what to look for',
  of: (planting: string, sentence: string) => `${planting}: ${sentence}`,
  ground: ({ quantity, minutes }: Format, { depthM, rootDepthM, minutes: run, usefulMinutes }: DepthSaid) =>
    depthM < rootDepthM
      ? `${minutes(run)} wet the ground about ${quantity(depthM, 'rootDepth')} deep; its roots reach ${quantity(rootDepthM, 'rootDepth')}. Up to ${minutes(usefulMinutes)} would be of use.`
      : `${minutes(run)} wet the ground as deep as its roots, ${quantity(rootDepthM, 'rootDepth')}. Beyond ${minutes(usefulMinutes)} water passes them.`,
  pot: ({ minutes }: Format, { minutes: run, usefulMinutes }: DepthSaid) =>
    run < usefulMinutes
      ? `${minutes(run)} fill part of what its mix is missing; ${minutes(usefulMinutes)} would fill it.`
      : `${minutes(run)} fill its mix. Beyond ${minutes(usefulMinutes)} water runs out at the bottom.`,
  /** The depth to look at, m. */
  lookGround: ({ quantity }: Format, depthM: number) =>
    `The day after, push a thin rod into the ground beside an emitter: it goes in with ease as deep as the ground is wet, about ${quantity(depthM, 'rootDepth')}. Or dig with a trowel: the ground there is damp, and holds together when you press it. Dry below? Run longer. Mud, or water in the hole? Run less.`,
  lookPot: 'The day after, push a finger into the mix: it is damp two joints deep, and no water stands in the saucer.',
};

export const howDeepWords = area('howDeep', howDeep);
