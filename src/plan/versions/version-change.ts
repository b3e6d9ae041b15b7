/** What another version of the format has changed for a plan that was written in an older one, as data: language has the sentences. */
import type { RainMethod } from '../../engine/rain/effective-rain.ts';

export interface VersionChangeValues {
  /** The plan names no way of counting the rain of its normals, and another one is usual now. */
  'rain-method': { readonly from: RainMethod; readonly to: RainMethod };
  /** So many plantings name no target depletion, and another one is usual now; shares of the allowed depletion. */
  'target-depletion': { readonly plantings: number; readonly from: number; readonly to: number };
  /** So many totals of rain are taken as read through the last day of their week, since they name no other. */
  'rain-read-through': { readonly weeks: number };
  /** So many names had tabs, line breaks or other controls, which are blanks now, or nothing that shows: those have another name. */
  'names-cleaned': { readonly names: number };
  /** So many lines were ended by a later one of their planting: each has its last day now, since several may lie at once. */
  'lines-ended': { readonly lines: number };
  /** In so many plantings emitters took over from others: the share of the ground that is wetted is another from that week on. */
  'wetted-anew': { readonly plantings: number };
  /** So many sources have a pressure, which lines answer to now. */
  'flow-at-pressure': { readonly sources: number };
  /** Of so many open buckets' flow this share is planned on. */
  'bucket-share': { readonly sources: number; readonly share: number };
  /** So many zones have spray beside drip: each line has the efficiency of its kind. */
  'efficiency-by-line': { readonly zones: number };
  /** So many lines are laid in loops, whose emitters are rounded to what is nearest. */
  'loop-emitters': { readonly lines: number };
  /** So many plantings have emitters that may wet a part of their ground, which is a store of its own now. */
  'ground-wetted': { readonly plantings: number };
  /** So many plantings are annual crops, whose roots grow now. */
  'roots-grow': { readonly plantings: number };
  /** So many plantings are bulbs that are left to dry in their last days now. */
  'dry-down': { readonly plantings: number };
  /** In so many months of the season the ground is taken to be frozen, and nothing is asked for. */
  'frozen-ground': { readonly months: number };
}

export type VersionChangeCode = keyof VersionChangeValues;

export type VersionChange = {
  [Code in VersionChangeCode]: { readonly code: Code; readonly values: VersionChangeValues[Code] };
}[VersionChangeCode];
