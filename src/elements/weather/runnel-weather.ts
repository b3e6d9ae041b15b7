import { property } from 'lit/decorators.js';
import type { IsoDate } from '../../engine/calendar.ts';
import { LateElement } from '../shared/late-element.ts';
import type { WeatherBody } from './weather-body.ts';

/**
 * @summary The garden's place and its weather: climate by month as a picture and a table, years of days, files, a weather service.
 *
 * Stands inside a `runnel-plan`. Places are found by name without asking anybody. A weather service is asked only where the plan's
 * `weather-service` names one, and only when a button is pressed; what leaves the page stands beside it. A file is shown for what it
 * was understood as before anything of it is taken. Weeks hotter or drier than usual are tried, and compared with the plan, before they
 * are kept in it or beside it.
 *
 * @fires {RunnelEditEvent} runnel-edit - The place, the climate, the years or readings were changed.
 * @fires {RunnelHistoryEvent} runnel-history - What was taken was taken back.
 *
 * @csspart drop - The place where a file is dropped.
 */
export class RunnelWeather extends LateElement<WeatherBody> {
  /** The day that counts as today, year-month-day; the reader's own unless set. */
  @property() today: IsoDate | undefined;

  /**
   * Whether the place, the service and the published tables stand beside it already: files and figures by month are left.
   *
   * @internal
   */
  @property({ attribute: false }) isBesidePlace = false;

  protected override readonly lateWords = 'weather';

  protected override async fetchBody(): Promise<WeatherBody> {
    const { WeatherBody } = await import('./weather-body.ts');
    return new WeatherBody(this, this.plan);
  }
}

export type { RunnelEventMap } from '../shared/events/runnel-events.ts';

declare global {
  interface HTMLElementTagNameMap {
    'runnel-weather': RunnelWeather;
  }
}
