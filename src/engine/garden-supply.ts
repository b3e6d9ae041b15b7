/** Where the water comes from, and when and how much of it may run, as the engine sees it. */
import type { DayNumber } from './calendar.ts';

export interface GardenSupply {
  /** In order of `from`. */
  readonly sources: readonly SupplySource[];
  /** Seven-bit mask of weekdays, bit 0 = Monday; 127 = every day. */
  readonly windowWeekdays: number;
  readonly windowHoursPerDay: number;
  /** The watering days of the zones keep them already; the hours do not. */
  readonly restrictions?: readonly SupplyRestriction[] | undefined;
  /** Of two that name a week the later in the list counts. */
  readonly cuts?: readonly SupplyCut[] | undefined;
  /** Minutes after midnight; left out: not known. */
  readonly windowOpensAtMinute?: number | undefined;
  readonly allowanceLitresPerWeek?: number | undefined;
  readonly allowanceLitresPerSeason?: number | undefined;
  readonly tank?: SupplyTank | undefined;
}

export interface SupplySource {
  readonly from: DayNumber;
  readonly name: string;
  readonly flowLpm?: number | undefined;
  /** At the inlet of the lines while water runs. */
  readonly pressureKpa?: number | undefined;
  /** Of a barrel: how far its water stands above the beds, m. The pressure is made of it. */
  readonly waterHeightM?: number | undefined;
}

/** From a day to a day, both included and each open where it is left out, water may run on these weekdays alone. */
export interface SupplyRestriction {
  readonly name?: string | undefined;
  readonly from?: DayNumber | undefined;
  readonly to?: DayNumber | undefined;
  /** Seven-bit mask, bit 0 = Monday. */
  readonly weekdays: number;
  readonly hoursPerDay?: number | undefined;
}

/** Less water in every week of the season that begins on one of its days. */
export type SupplyCut = {
  readonly from: DayNumber;
  readonly to: DayNumber;
} & (
  | { readonly share: number; readonly litresPerWeek?: undefined }
  | { readonly litresPerWeek: number; readonly share?: undefined }
);

export interface SupplyTank {
  readonly capacityLitres: number;
  readonly startLitres: number;
  readonly roofAreaM2: number;
  readonly runoffCoefficient: number;
}
