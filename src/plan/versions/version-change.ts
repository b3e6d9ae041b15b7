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
}

export type VersionChangeCode = keyof VersionChangeValues;

export type VersionChange = {
  [Code in VersionChangeCode]: { readonly code: Code; readonly values: VersionChangeValues[Code] };
}[VersionChangeCode];
