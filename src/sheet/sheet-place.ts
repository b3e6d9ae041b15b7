import type { WeatherKind } from './week-weather.ts';

/** A place in the season that every view can point at. All left out = the whole garden. */
export interface SheetPlace {
  readonly zone?: string | undefined;
  readonly planting?: string | undefined;
  /** Of the whole garden, its weather alone. */
  readonly weather?: WeatherKind | undefined;
  /** Week of the season, from 0. */
  readonly week?: number | undefined;
}
