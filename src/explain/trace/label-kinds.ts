/** What the values of steps are, each with what its label names. `language/en/trace-labels.ts` has the labels. */
import type { DayNumber } from '../../engine/calendar.ts';
import type { ETO_METHODS } from '../../engine/climate/daily-eto.ts';
import type { ReadingOrigin } from '../../engine/garden-weather.ts';
import type { Names } from '../../engine/names.ts';
import type { RAIN_ORIGINS } from '../../engine/rain/daily-rain.ts';
import type { GroundLabels } from './ground-label-kinds.ts';
import type { Named, NumberedLine, OfDay, OfLine, OfMonth } from './label-about.ts';

export interface DaysRead {
  readonly days: number;
  /** Of readings that nobody typed. */
  readonly from?: ReadingOrigin;
}

interface WeatherLabels {
  readonly 'eto-days': DaysRead & { readonly method: (typeof ETO_METHODS)[number] };
  readonly 'rain-days': DaysRead & { readonly origin: (typeof RAIN_ORIGINS)[number] };
  readonly 'min-temperature': unknown;
  readonly 'max-temperature': unknown;
  readonly 'vapour-pressure': unknown;
  readonly 'wind-2m': unknown;
  readonly 'net-radiation': unknown;
  readonly 'soil-heat': unknown;
  readonly elevation: unknown;
  readonly 'mean-days': unknown;
  readonly 'not-known': unknown;
  readonly 'extraterrestrial-radiation': unknown;
  readonly 'month-total': OfMonth;
  /** `times`: how many times the usual is expected of them. */
  readonly 'usual-of-days': { readonly days: number; readonly times: number };
  readonly 'week-start': unknown;
  readonly 'days-of-week': unknown;
  readonly 'week-total': unknown;
  readonly 'own-figure-total': unknown;
  readonly 'sharing-days': unknown;
  readonly 'read-through': unknown;
  readonly 'rain-day-share': unknown;
  readonly 'days-wet': unknown;
  readonly 'counted-days': unknown;
}

interface NeedLabels {
  readonly 'plant-factor': { readonly plant: Names };
  readonly density: unknown;
  readonly microclimate: unknown;
  readonly 'growth-start': unknown;
  readonly 'growth-day': unknown;
  readonly 'growth-days-left': unknown;
  readonly 'ground-days': unknown;
  readonly 'stage-initial': unknown;
  readonly 'stage-development': unknown;
  readonly 'stage-mid': unknown;
  readonly 'stage-late': unknown;
  readonly 'kc-initial': unknown;
  readonly 'kc-mid': unknown;
  readonly 'kc-end': unknown;
  readonly 'establishing-factor': unknown;
  readonly 'establishing-days': unknown;
  readonly coefficient: unknown;
  readonly eto: unknown;
  readonly 'day-coefficient': OfDay;
  readonly 'day-eto': OfDay;
  readonly 'month-rain': unknown;
  readonly 'month-demand': unknown;
  readonly 'mean-readily-available': unknown;
  readonly 'mean-demand': unknown;
  readonly years: unknown;
  readonly 'years-rain': unknown;
  readonly 'years-kept': unknown;
  readonly 'counted-share': unknown;
  readonly 'normal-rain': OfMonth;
  readonly 'rain-share': OfMonth;
  readonly 'day-rain': OfDay;
  readonly runoff: unknown;
  readonly 'soil-available-water': { readonly texture: Names };
  readonly 'root-depth': unknown;
  readonly 'pot-mix': unknown;
  readonly 'mix-available': unknown;
  readonly 'available-water': unknown;
  readonly 'allowed-depletion': unknown;
  readonly 'day-demand': OfDay;
  readonly 'day-readily-available': OfDay;
  readonly 'start-share': unknown;
  readonly 'target-share': unknown;
  readonly 'depletion-before': { readonly week: number };
  readonly 'depletion-start': unknown;
  readonly rooted: unknown;
  /** `nextWeek`: whether the day lies in the week after. */
  readonly 'readily-available-then': OfDay & { readonly nextWeek: boolean };
  readonly target: unknown;
  readonly 'establishing-until': unknown;
  readonly due: unknown;
  readonly 'days-due': unknown;
  readonly 'still-due': unknown;
  readonly resting: unknown;
  readonly filling: unknown;
  readonly 'day-change': OfDay;
  readonly goal: OfDay;
  readonly 'watering-days-in-ground': unknown;
}

interface MinutesLabels {
  readonly line: unknown;
  readonly emitters: unknown;
  readonly 'emitter-flow': unknown;
  readonly 'wetted-ground': NumberedLine;
  readonly 'source-pressure': unknown;
  readonly 'flow-through': unknown;
  readonly 'solid-length': NumberedLine;
  readonly 'solid-bore': NumberedLine;
  readonly smoothness: NumberedLine;
  readonly 'climb-loss': NumberedLine;
  readonly 'friction-loss': NumberedLine;
  readonly 'line-pressure': unknown;
  readonly 'least-pressure': unknown;
  readonly exponent: unknown;
  readonly 'mean-emitter-flow': unknown;
  readonly 'line-flow': OfLine;
  readonly ground: unknown;
  readonly 'application-rate': OfLine;
  readonly 'net-rate': OfLine;
  readonly efficiency: unknown;
  readonly need: unknown;
  readonly 'day-depletion-start': OfDay;
  readonly 'demand-between': OfDay & { readonly lastDay: DayNumber };
  readonly 'day-rain-soaked': OfDay;
  readonly 'day-net-rate': OfDay;
  readonly 'week-watering-days': unknown;
  readonly 'days-asking': unknown;
  readonly 'days-watering': unknown;
  readonly 'days-open': unknown;
  readonly 'days-running': unknown;
  readonly 'zone-minutes': unknown;
  readonly 'minutes-on-days': { readonly openDays: number };
  readonly 'hand-set-days': unknown;
  readonly 'minutes-asked': unknown;
  readonly 'irrigation-gross': unknown;
  readonly 'irrigation-net': unknown;
  /** Named in the reader's own words. */
  readonly planting: Named;
  readonly zone: Named;
  readonly 'litres-of-a-minute': Named;
  readonly origin: unknown;
  readonly 'water-at-hand': Named;
  readonly 'daily-use': Named;
  readonly 'allowed-days': unknown;
  readonly 'minutes-given': unknown;
  readonly 'minutes-needed': unknown;
  readonly 'timer-step': unknown;
  readonly 'longest-cycle': unknown;
  readonly 'starts-a-day': unknown;
  readonly 'depletion-of': Named;
  readonly 'net-rate-of': Named;
  readonly 'lasts-from': Named;
  readonly 'run-days': unknown;
  readonly 'minutes-per-day': unknown;
  readonly 'cut-share': unknown;
  readonly 'day-minutes': OfDay;
  readonly 'minutes-watered': OfLine;
}

interface CheckLabels {
  readonly 'day-depletion-end': OfDay;
  readonly 'day-stress': OfDay;
  readonly 'day-water-there': OfDay;
  readonly 'day-used': OfDay;
  readonly 'day-irrigation': OfDay;
  readonly demand: unknown;
  readonly used: unknown;
  readonly 'effective-rain': unknown;
  readonly rain: unknown;
  readonly 'rain-drained': unknown;
  readonly 'irrigation-drained': unknown;
  readonly lost: unknown;
  readonly 'storage-change': unknown;
  readonly 'depletion-end': unknown;
  readonly 'rain-stayed': unknown;
  readonly 'irrigation-stayed': unknown;
  readonly 'unmet-demand': unknown;
  readonly missed: unknown;
  readonly 'rounding-lack': unknown;
  readonly unasked: unknown;
  readonly 'rounding-excess': unknown;
  readonly litres: unknown;
  readonly 'rain-litres': unknown;
  readonly 'demand-litres': unknown;
  readonly 'used-litres': unknown;
  readonly 'rain-stayed-litres': unknown;
  readonly 'drained-litres': unknown;
  readonly 'lost-litres': unknown;
  readonly 'storage-litres': unknown;
  readonly 'ground-of-all': unknown;
  readonly 'flow-of-all': unknown;
  readonly 'rain-credit-litres': unknown;
  readonly 'weeks-before': unknown;
  readonly 'this-week': unknown;
  readonly 'cumulative-storage': unknown;
  readonly 'cumulative-demand': unknown;
  readonly 'cumulative-used': unknown;
}

export interface LabelKinds extends WeatherLabels, GroundLabels, NeedLabels, MinutesLabels, CheckLabels {}
