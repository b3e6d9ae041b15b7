/** Compares the plantings of the zone that is shown, and keeps the last comparison. */
import type { ZoneRule } from '../../engine/garden.ts';
import { compareZone, comparingZone, type ZoneComparison } from '../../engine/mix/compare-zone.ts';
import type { Season, ZoneSeason } from '../../engine/season/season.ts';
import { inSlices } from '../shared/in-slices.ts';
import type { ViewElement } from '../shared/view-element.ts';

interface Compared {
  readonly zone: ZoneSeason;
  readonly rule: ZoneRule | undefined;
  readonly comparison: ZoneComparison;
}

/** The first comparison is slow, since its code has never run: it is worked out a little at a time, and drawn once it is there. */
export class ZoneComparer {
  readonly #host: ViewElement;
  #compared: Compared | undefined;
  /** The zone whose first comparison is being worked out. */
  #first: ZoneSeason | undefined;
  #comparing: Promise<void> | undefined;

  constructor(host: ViewElement) {
    this.#host = host;
  }

  get hasCompared(): boolean {
    return this.#compared !== undefined;
  }

  /** Waits for the first comparison; false where there was something to wait for. */
  async isSettled(): Promise<boolean> {
    if (this.#comparing === undefined) return true;
    await this.#comparing;
    return false;
  }

  /** `rule`: shown as if it held. Undefined while the first one is being worked out. */
  compare(season: Season, zone: ZoneSeason, rule: ZoneRule | undefined): ZoneComparison | undefined {
    if (this.#compared === undefined) {
      this.#begin(season, zone);
      return undefined;
    }
    if (this.#compared.zone !== zone || this.#compared.rule !== rule) {
      this.#compared = { zone, rule, comparison: compareZone(season, zone.zone.id, rule) };
    }
    return this.#compared.comparison;
  }

  /** The comparison of a zone by its own rule, where it is the last one. */
  asPlanned({ zone }: ZoneSeason): ZoneComparison | undefined {
    const compared = this.#compared;
    return compared?.zone.zone === zone && compared.rule === undefined ? compared.comparison : undefined;
  }

  #begin(season: Season, zone: ZoneSeason): void {
    if (this.#first === zone) return;
    this.#first = zone;
    this.#comparing = new Promise((resolve) => {
      inSlices({
        steps: comparingZone(season, zone.zone.id),
        isWanted: () => {
          if (this.#first !== zone) resolve();
          return this.#first === zone;
        },
        onEnd: (comparison) => {
          this.#compared = { zone, rule: undefined, comparison };
          this.#comparing = undefined;
          this.#host.requestUpdate();
          resolve();
        },
        onFault: (error) => {
          this.#comparing = undefined;
          this.#host.fail(error);
          resolve();
        },
      });
    });
  }
}
