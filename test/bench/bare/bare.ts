/** The bare loop with the garden it runs on. */
import type { Garden } from '../../../src/engine/garden.ts';
import { type BareDays, bareDays } from './days.ts';
import { type BareGarden, bareGarden } from './garden.ts';
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

  /** Rain of a week, as read from a gauge. */
  setRain(week: number, rainMm: number): void {
    const { rain, normalRain, soakedRain } = this.garden.weather;
    rain.fill(rainMm / 7, week * 7, week * 7 + 7);
    normalRain.fill(0, week * 7, week * 7 + 7);
    soakedRain.fill(rainMm / 7, week * 7, week * 7 + 7);
    runBareWeeks(this.garden, this.#days, this.sums);
  }

  setMinutes(zone: number, week: number, minutes: number): void {
    this.garden.zones.handMinutes[zone * this.garden.weather.weeks + week] = minutes;
    runBareZone(this.garden, zone, this.#days, this.sums);
  }
}
