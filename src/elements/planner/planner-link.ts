import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import { formatNumber } from '../../language/format/number.ts';
import { controls } from '../../look/controls.styles.ts';
import { tokens } from '../../look/tokens.styles.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { plannerWords } from '../shared/words/planner-words.ts';

/** Mail and chat programs cut addresses that are much longer. */
const LONG_LINK = 8000;

/**
 * Copies a link that carries the plan, where the page opens such links. What is said of it lies beneath the bar that this
 * stands in, so that what the bar holds stays where it is. Internal to `runnel-planner`.
 */
export class PlannerLink extends LitElement {
  static override readonly styles = [
    tokens,
    controls,
    css`
      :host {
        display: flex;
        flex-wrap: wrap;
        gap: 0.4rem 0.75rem;
        align-items: center;
      }

      .said {
        display: grid;
        gap: 0.4rem;
        position: absolute;
        inset-block-start: calc(100% + 0.4rem);
        inset-inline-end: 0;
        z-index: 210;
        box-sizing: border-box;
        max-inline-size: min(24rem, 100%);
        padding: 0.6rem 0.75rem;
        border: 1px solid var(--_quiet);
        border-radius: 0.4rem;
        background: var(--_paper);
      }

      .said.empty {
        display: contents;
      }

      input {
        box-sizing: border-box;
        inline-size: 100%;
        font: inherit;
      }
    `,
  ];

  readonly #plan = new PlanConsumer(this);

  @state() private link = '';

  @state() private isCopied = false;

  /** The plan that the link holds: of another nothing is said. */
  #linked: Plan | undefined;

  async #copy(): Promise<void> {
    const { plan } = this.#plan.view;
    if (plan === undefined) return;
    const { linkTo } = await import('../../exchange/link/link-to.ts');
    this.link = await linkTo(plan, location.href);
    this.#linked = plan;
    try {
      await navigator.clipboard.writeText(this.link);
      this.isCopied = true;
    } catch {
      this.isCopied = false;
      await this.updateComplete;
      this.shadowRoot?.querySelector('input')?.select();
    }
  }

  protected override render(): TemplateResult | typeof nothing {
    const { plan, fromLink } = this.#plan.view;
    if (plan === undefined || fromLink !== true) return nothing;
    const hasLink = this.link !== '' && plan === this.#linked;
    return html`<div @focusout=${this.#onLeave} @keydown=${this.#onKey}>
      <button @click=${() => void this.#copy()}>${plannerWords.copyLink}</button>
      <div class=${hasLink ? 'said' : 'said empty'}>
        <div role="status">${hasLink ? html`<p class="small">${this.#said()}</p>` : nothing}</div>
        ${hasLink && !this.isCopied ? html`<input readonly aria-label=${plannerWords.link} .value=${this.link} />` : nothing}
      </div>
    </div>`;
  }

  /** What was said is over once somebody goes on to something else. */
  readonly #onLeave = ({ currentTarget, relatedTarget }: FocusEvent): void => {
    if (!(currentTarget as HTMLElement).contains(relatedTarget as Node | null)) this.link = '';
  };

  readonly #onKey = ({ key }: KeyboardEvent): void => {
    if (key === 'Escape') this.link = '';
  };

  #said(): string {
    const said = this.isCopied ? plannerWords.linkCopied : plannerWords.linkToCopy;
    if (this.link.length <= LONG_LINK) return said;
    return `${said} ${plannerWords.longLink(formatNumber(this.link.length, this.#plan.view.locale))}`;
  }
}
