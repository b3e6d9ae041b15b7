import { property, state } from 'lit/decorators.js';
import type { IsoDate } from '../../engine/calendar.ts';
import { LateElement } from '../shared/late-element.ts';
import type { GardenBody } from './garden-body.ts';

/**
 * @summary Edits the garden itself: place, climate, supply, zones, plantings and lines.
 *
 * Stands inside a `runnel-plan`. Without a plan it offers to start one. What is refused stays in its field with the
 * reason; everything else is kept at once and can be undone.
 *
 * @fires {RunnelEditEvent} runnel-edit - Something was changed.
 * @fires {RunnelHistoryEvent} runnel-history - The last change was undone.
 * @fires {RunnelOpenEvent} runnel-open - A new plan was started.
 * @fires {RunnelSelectEvent} runnel-select - The section that was asked for is in sight: no longer selected.
 */
export class RunnelGarden extends LateElement<GardenBody> {
  /** The day that counts as today, year-month-day; the reader's own unless set. */
  @property() today: IsoDate | undefined;

  /** Ids of the sections, zones and plantings that are unfolded. */
  @state() private opened: ReadonlySet<string> = new Set();

  /**
   * Whether a section is unfolded.
   *
   * @internal
   */
  isOpen(id: string): boolean {
    return this.opened.has(id);
  }

  protected override readonly lateWords = 'garden';

  /**
   * Unfolds a section, or folds it.
   *
   * @internal
   */
  open(id: string, open: boolean): void {
    if (open === this.opened.has(id)) return;
    const next = new Set(this.opened);
    if (open) next.add(id);
    else next.delete(id);
    this.opened = next;
  }

  protected override willUpdate(): void {
    const { part } = this.plan.view.selection;
    if (part !== undefined) this.open(part, true);
  }

  protected override updated(): void {
    const { part, ...others } = this.plan.view.selection;
    if (part === undefined || this.body === undefined) return;
    const section = this.renderRoot.querySelector(`#${part}`);
    section?.scrollIntoView({ block: 'start' });
    if (section) void focusFirst(section);
    this.plan.select(others);
  }

  protected override async fetchBody(): Promise<GardenBody> {
    const { GardenBody } = await import('./garden-body.ts');
    return new GardenBody(this, this.plan);
  }
}

/** The weather's section holds an element, whose fields are its own and may still be fetched. */
async function focusFirst(section: Element): Promise<void> {
  const weather = section.querySelector('runnel-weather');
  while (weather?.isConnected && !(await weather.updateComplete));
  const root = weather?.shadowRoot ?? section;
  root.querySelector<HTMLElement>('select, input')?.focus({ preventScroll: true });
}

export type { RunnelEventMap } from '../shared/events/runnel-events.ts';

declare global {
  interface HTMLElementTagNameMap {
    'runnel-garden': RunnelGarden;
  }
}
