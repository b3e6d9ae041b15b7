/** What the values of steps are that tell of mulch, pots, ground that is wetted in part, roots that grow, and rest. */
import type { DayNumber } from '../../engine/calendar.ts';
import type { Named, OfDay, OfPart } from './label-about.ts';

export interface GroundLabels {
  readonly 'mulch-cover': unknown;
  readonly 'mulch-less': unknown;
  readonly 'kc-bare': unknown;
  readonly 'rest-from': unknown;
  readonly 'rest-to': unknown;
  readonly 'ground-first': unknown;
  readonly pots: unknown;
  readonly opening: unknown;
  readonly 'opening-rain': unknown;
  readonly 'rain-factor': unknown;
  readonly 'first-root-depth': unknown;
  readonly 'full-root-depth': unknown;
  readonly 'growth-day-last': unknown;
  readonly 'part-depletion': OfPart;
  readonly 'day-part-depletion': OfDay & OfPart;
  readonly 'day-part-end': OfDay & OfPart;
  readonly 'day-drawn': OfDay & OfPart;
  readonly 'day-rooted': OfDay;
  readonly 'rooted-between': OfDay & { readonly lastDay: DayNumber };
  readonly 'after-last-run': unknown;
  readonly 'day-left': OfDay;
  readonly 'wetted-share': unknown;
  readonly 'soil-group': unknown;
  readonly 'wetting-flow': unknown;
  readonly 'wetted-width': unknown;
  readonly 'line-length': unknown;
  readonly 'leaching-fraction': unknown;
  readonly 'leaching-depth': unknown;
  readonly 'soak-depth': unknown;
  readonly 'day-runs': OfDay;
  readonly 'day-available': OfDay;
  readonly 'runs-a-day': unknown;
  readonly 'runs-readily-available': Named;
  readonly 'runs-use': Named;
}
