import { LateElement } from '../shared/late-element.ts';
import type { NoticesBody } from './notices-body.ts';

/**
 * @summary What needs attention in the season, worst first, each with where it holds and what to do about it.
 *
 * Stands inside a `runnel-plan`. What would mend a notice of line or supply is worked out when its "What to do" is
 * unfolded: each change with what it comes to, to be made and undone on the spot. A file or a remedy that was refused is
 * listed above, fault by fault. The usual cautions stand at its foot.
 *
 * @fires {RunnelSelectEvent} runnel-select - A notice's cell was asked for.
 * @fires {RunnelEditEvent} runnel-edit - A notice's remedy was taken.
 * @fires {RunnelHistoryEvent} runnel-history - The remedy just taken was undone.
 *
 * @csspart title - How many things need attention.
 * @csspart remedies - What would mend one notice, best first.
 * @csspart cautions - The cautions.
 */
export class RunnelNotices extends LateElement<NoticesBody> {
  protected override async fetchBody(): Promise<NoticesBody> {
    const { NoticesBody } = await import('./notices-body.ts');
    return new NoticesBody(this, this.plan);
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    const isComplete = await super.getUpdateComplete();
    return ((await this.body?.isSettled()) ?? true) && isComplete;
  }
}

export type { RunnelEventMap } from '../shared/events/runnel-events.ts';

declare global {
  interface HTMLElementTagNameMap {
    'runnel-notices': RunnelNotices;
  }
}
