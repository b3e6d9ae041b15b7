import type { MissingReading } from '../../engine/climate/weather-readings.ts';
import type { GardenLine } from '../../engine/garden.ts';
import type { WettingGroup } from '../../engine/line/wetted-width.data.ts';
import type { MinutesOrigin, State } from '../../engine/season/season.ts';

/** Lists of codes that stand where a step has no number. */
export interface TraceCodes {
  readonly state: State;
  readonly origin: MinutesOrigin;
  readonly reading: MissingReading;
  readonly line: GardenLine['kind'];
  /** How wide soil is wetted. */
  readonly soil: WettingGroup;
  readonly answer: 'yes' | 'no';
  /** Why a planting is left out where its zone's minutes are found. */
  readonly exclusion: 'not-named' | 'not-there' | 'no-line' | 'shut-off';
  /** Where no number could be. */
  readonly limit: 'no-limit' | 'no-run-is-enough' | 'none';
}
