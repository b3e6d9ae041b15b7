import { css, html, nothing, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import { plannerWords } from '../../language/en/planner.ts';
import { controls } from '../../look/controls.styles.ts';
import { tokens } from '../../look/tokens.styles.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { readingOf } from '../shared/plan-state.ts';
import { ViewElement } from '../shared/view-element.ts';
import { PLANNER_VIEWS, type PlannerView } from './planner-views.ts';
import { ShowViewEvent } from './show-view-event.ts';

/**
 * The planner's views by name: links where each has an address of its own, else buttons. Internal to `runnel-planner`.
 *
 * @fires {ShowViewEvent} runnel-show-view - A view was chosen.
 */
export class PlannerNav extends ViewElement {
  static override readonly styles = [
    tokens,
    controls,
    css`
      :host {
        background: none;
      }

      nav {
        display: flex;
        flex-wrap: wrap;
        gap: 0 1.6rem;
      }

      a,
      button {
        display: inline-grid;
        flex: none;
        align-items: center;
        min-block-size: 2.1rem;
        margin: 0;
        padding-block: 0;
        padding-inline: 0;
        border: solid transparent;
        border-width: 2px 0;
        border-radius: 0;
        background: none;
        color: var(--_quiet);
        text-decoration: none;
        white-space: nowrap;
      }

      [aria-current] {
        border-block-end-color: var(--_ink);
        color: var(--_ink);
        font-weight: 650;
      }

      @media (hover: hover) {
        :is(a, button):not(:disabled, .plain):hover {
          background: none;
          color: var(--_ink);
        }
      }

      :focus-visible {
        outline-offset: -3px;
      }

      @media (pointer: coarse) {
        a,
        button {
          min-block-size: 2.75rem;
        }
      }

      @container (max-width: 699px) {
        nav {
          gap: 0;
          justify-content: space-between;
        }

        a,
        button {
          flex: 1 1 auto;
          justify-content: center;
          min-block-size: 3.5rem;
          padding-inline: 0.2rem;
          border-width: 3px 0;
          font-size: max(var(--_size-small), 13px);
          text-align: center;
        }

        [aria-current] {
          border-block-color: var(--_ink) transparent;
        }
      }

      @media print {
        nav {
          display: none;
        }
      }

      @media (forced-colors: active) {
        :is(a, button):not([aria-current]) {
          border-color: Canvas;
        }

        [aria-current] {
          border-block-color: Canvas Highlight;
        }

        @container (max-width: 699px) {
          [aria-current] {
            border-block-color: Highlight Canvas;
          }
        }
      }
    `,
  ];

  @property({ attribute: false }) views: readonly PlannerView[] = PLANNER_VIEWS;

  @property({ attribute: false }) view: PlannerView = 'season';

  /** The address of a view, where views have one. */
  @property({ attribute: false }) addressOf: (view: PlannerView) => string | undefined = () => undefined;

  readonly #plan = new PlanConsumer(this);

  protected override render(): TemplateResult {
    const say = plannerWords(readingOf(this.#plan.view).language);
    return html`<nav aria-label=${say.views}>${this.views.map((view) => this.#way(view, say.view[view]))}</nav>`;
  }

  #way(view: PlannerView, words: string): TemplateResult {
    const address = this.addressOf(view);
    const current = view === this.view ? 'page' : undefined;
    const go = (event: MouseEvent) => {
      // A link that is to open elsewhere is the browser's.
      if (event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return;
      event.preventDefault();
      this.dispatchEvent(new ShowViewEvent(view));
    };
    return address === undefined
      ? html`<button data-view=${view} aria-current=${current ?? nothing} @click=${go}>${words}</button>`
      : html`<a data-view=${view} href=${address} aria-current=${current ?? nothing} @click=${go}>${words}</a>`;
  }
}
