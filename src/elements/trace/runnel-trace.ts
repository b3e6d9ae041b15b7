import { consume } from '@lit/context';
import { property } from 'lit/decorators.js';
import { RunnelHoverEvent } from '../shared/events/hover-event.ts';
import { fetchLateWords } from '../shared/fetch-late-words.ts';
import { LateElement } from '../shared/late-element.ts';
import { pointedWeekContext } from '../shared/pointed-week-context.ts';
import type { TraceBody } from './trace-body.ts';

/**
 * @summary Why the selected number is so: three sentences, then every step with its inputs, units, formula and source.
 *
 * Stands inside a `runnel-plan` and follows its selection: the week of a zone, of one planting in it, or of the whole
 * garden.
 *
 * @fires {RunnelEditEvent} runnel-edit - The week that is asked about was changed: its minutes, its note, or whether it is closed.
 * @fires {RunnelSelectEvent} runnel-select - Another planting of the zone, or its total, was chosen.
 * @fires {RunnelHoverEvent} runnel-hover - The pointer came to the trace, whose week it then points at, or left it.
 *
 * @csspart title - The number that is asked about.
 */
export class RunnelTrace extends LateElement<TraceBody> {
  /** Week of the season that any view of the plan points at; it is marked where it is the one that is explained. */
  @consume({ context: pointedWeekContext, subscribe: true })
  @property({ attribute: false })
  pointedWeek: number | undefined;

  protected override readonly lateWords = 'trace';

  constructor() {
    super();
    this.addEventListener('pointerenter', () => this.#point(this.plan.view.selection.week));
    this.addEventListener('pointerleave', () => this.#point(undefined));
  }

  #point(week: number | undefined): void {
    if (week !== this.pointedWeek) this.dispatchEvent(new RunnelHoverEvent(week));
  }

  protected override async fetchBody(): Promise<TraceBody> {
    const [{ TraceBody }] = await Promise.all([
      import('./trace-body.ts'),
      fetchLateWords('traceGround', this.plan.view.locale),
    ]);
    return new TraceBody(this, this.plan);
  }
}

export type { RunnelEventMap } from '../shared/events/runnel-events.ts';

declare global {
  interface HTMLElementTagNameMap {
    'runnel-trace': RunnelTrace;
  }
}
