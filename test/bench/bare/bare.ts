/** The bare loop with the garden it runs on. */
import type { Garden } from '../../../src/engine/garden.ts';
import { type BareDays, bareDays } from './days.ts';
import { type BareGarden, bareGarden } from './garden.ts';
import { keptShares } from './kept.ts';
import { type BareSums, bareSums, runBare, runBareWeeks, runBareZone } from './season.ts';

export class Bare {
  readonly garden: BareGarden;
  readonly sums: BareSums;
  readonly #days: BareDays;

  constructor(garden: Garden) {
    this.garden = bareGarden(garden);
    this.sums = bareSums(this.garden);
    this.#days = bareDays(this.garden);
  }

  run(): void {
    runBare(this.garden, this.#days, this.sums);
  }

  /** Kept rain alone, of every planting that asks for itself; their demand is known. */
  keepRain(): void {
    const { plantings, keepers, weather } = this.garden;
    for (let keeper = 0; keeper < keepers.planting.length; keeper++) {
      keptShares(plantings, keepers, keeper, weather, this.#days);
    }
  }

  /** Rain of a week, as read from a gauge: on its usual number of rain days, in the middle. */
  setRain(week: number, rainMm: number): void {
    const { eto, soakedRain, isRead, wetDays } = this.garden.weather;
    const wet = wetDays[week] as number;
    const start = 7 * week + Math.floor((7 - wet) / 2);
    for (let day = 7 * week; day < 7 * week + 7; day++) {
      const rain = day >= start && day < start + wet ? rainMm / wet : 0;
      soakedRain[day] = rain < 0.2 * (eto[day] as number) ? 0 : rain;
      isRead[day] = 1;
    }
    runBareWeeks(this.garden, this.#days, this.sums, week);
  }

  setMinutes(zone: number, week: number, minutes: number): void {
    this.garden.zones.handMinutes[zone * this.garden.weather.weeks + week] = minutes;
    runBareZone(this.garden, zone, this.#days, this.sums);
  }
}
