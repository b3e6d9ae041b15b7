/** Sources that are no publication, or say more of one, each with what its note names. */
import type { DayNumber } from '../../engine/calendar.ts';
import type { WeatherEstimate } from '../../engine/climate/weather-estimates.ts';

export interface Cited {
  /** The publication. */
  readonly cite: string;
}

export interface FreeText {
  readonly text: string;
}

export interface SourceNotes {
  readonly definition: unknown;
  readonly 'conservation-of-water': unknown;
  readonly 'common-practice': unknown;
  /** Of which the printed source was not at hand. */
  readonly 'not-checked': Cited;
  readonly plan: unknown;
  /** A choice of Runnel's own; the others say of what. */
  readonly choice: unknown;
  readonly 'choice-normals-curve': unknown;
  readonly 'choice-equal-days': unknown;
  readonly 'choice-rain-days': unknown;
  /** Where the rain days of the months are not known. */
  readonly 'choice-rain-days-assumed': unknown;
  readonly 'choice-refill': Cited;
  readonly 'choice-room': unknown;
  readonly 'choice-nearest': unknown;
  readonly 'choice-open-days': unknown;
  readonly 'choice-cut': unknown;
  readonly 'choice-rain-first': unknown;
  readonly 'choice-state-names': unknown;
  readonly observed: unknown;
  readonly 'observed-week': unknown;
  readonly 'forecast-day': unknown;
  /** `text`: what the plan says of its normals' source. */
  readonly normals: FreeText;
  /** What was estimated, and by which rule; Runnel's own where nothing is cited. */
  readonly estimate: Partial<Cited> & { readonly estimate: WeatherEstimate };
  readonly 'plant-factor-set': unknown;
  readonly 'crop-coefficients-set': unknown;
  readonly 'stages-set': unknown;
  readonly 'landscape-demand': Cited;
  readonly 'establishing-factor': unknown;
  readonly 'scs-simplified': Cited;
  readonly 'rain-fraction': Cited;
  readonly 'measured-days': Cited;
  /** `text`: what the plan says of its years' source. */
  readonly 'years-recorded': FreeText;
  readonly 'years-made': Cited;
  /** `day`: that of issue. */
  readonly forecast: Cited & { readonly day: DayNumber };
  /** Of a publication that counts a day's water in another order. */
  readonly 'order-of-day': Cited;
  readonly 'start-depletion': Cited;
  readonly 'target-depletion': Cited;
  readonly 'solved-for-irrigation': Cited;
  readonly 'efficiency-usual': Cited;
  readonly 'efficiency-set': unknown;
  /** From the distribution uniformity that the plan has. */
  readonly 'efficiency-from-du': Cited;
  /** From the emission uniformity that was computed along the lines. */
  readonly 'efficiency-from-eu': Cited;
  /** Friction in a pipe that carries one flow. */
  readonly 'hazen-williams': unknown;
  /** Pressure and flow along a line, outlet by outlet. */
  readonly 'solved-along-line': unknown;
  readonly 'zone-rule': unknown;
  readonly 'rule-thirstiest': Cited;
  readonly 'cycle-and-soak': unknown;
  readonly 'longest-cycle': Cited;
  readonly 'run-log': unknown;
  readonly 'choice-of-week': unknown;
}
