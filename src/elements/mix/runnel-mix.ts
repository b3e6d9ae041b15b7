import { property } from 'lit/decorators.js';
import { CATALOGUE } from '../../engine/line/catalogue.data.ts';
import type { Catalogue } from '../../engine/line/catalogue.ts';
import { readyFormats } from '../../language/format/ready-formats.ts';
import { controls } from '../../look/controls.styles.ts';
import { tokens } from '../../look/tokens.styles.ts';
import { fetchLateWords } from '../shared/fetch-late-words.ts';
import { afterOthers } from '../shared/in-slices.ts';
import { LatePart } from '../shared/late-part.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { ViewElement } from '../shared/view-element.ts';

/**
 * @summary The plantings of one zone side by side: which is overwatered, which goes short, in which weeks, at what
 * cost, and what to do about it.
 *
 * Stands inside a `runnel-plan`. Shows the selected zone, else the first in which plantings differ by number. A planting
 * can be tried in another zone before anything is kept.
 *
 * @fires {RunnelSelectEvent} runnel-select - Another zone was chosen.
 * @fires {RunnelEditEvent} runnel-edit - A remedy was taken, or what was tried is kept.
 * @fires {RunnelHistoryEvent} runnel-history - The remedy just taken was undone.
 *
 * @csspart title - What the comparison finds, in words.
 * @csspart picture - Needed against received, planting by planting.
 * @csspart remedies - The ranked list of what would help.
 * @csspart trial - What is only tried.
 * @csspart cautions - The cautions beside the remedies.
 */
export class RunnelMix extends ViewElement {
  static override readonly styles = [tokens, controls];

  /** Goods that a remedy may propose; the kit's usual trade sizes unless set. */
  @property({ attribute: false }) catalogue: Catalogue = CATALOGUE;

  readonly #plan = new PlanConsumer(this);
  readonly #body = new LatePart(this, this.#plan, async () => {
    const [{ MixBody }] = await Promise.all([import('./mix-body.ts'), fetchLateWords('mix', this.#plan.view.locale)]);
    return new MixBody(this, this.#plan);
  });

  override connectedCallback(): void {
    super.connectedCallback();
    afterOthers(() => readyFormats(this.#plan.view.locale));
  }

  protected override willUpdate(): void {
    this.#body.part?.follow();
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    const isComplete = await super.getUpdateComplete();
    return (await this.#body.isSettled()) && (await (this.#body.part?.isDrawn() ?? true)) && isComplete;
  }

  protected override render(): unknown {
    return this.#body.part?.render() ?? this.#body.waiting;
  }
}

export type { RunnelEventMap } from '../shared/events/runnel-events.ts';

declare global {
  interface HTMLElementTagNameMap {
    'runnel-mix': RunnelMix;
  }
}
