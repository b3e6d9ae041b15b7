/** Rain and demand of the season's days in many years, recorded or made. */
export interface SeasonYears {
  readonly basis: 'record' | 'made';
  readonly years: number;
  /** The year in which each recorded one begins; undefined for made ones. */
  readonly calendarYears?: readonly number[] | undefined;
  /** Days of the season. */
  readonly days: number;
  /** Rain of day d of year y at [d * years + y], mm. */
  readonly rainMm: Float64Array;
  /** Reference ET of that day over what the normals say of it. */
  readonly etoShare: Float64Array;
}
