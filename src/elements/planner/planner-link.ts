import { css, html, nothing, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import { plannerWords } from '../../language/en/planner.ts';
import { formatFor } from '../../language/format/format.ts';
import { controls } from '../../look/controls.styles.ts';
import { tokens } from '../../look/tokens.styles.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { readingOf } from '../shared/plan-state.ts';
import { ViewElement } from '../shared/view-element.ts';

/** Mail and chat programs cut addresses that are much longer. */
const LONG_LINK = 8000;

/**
 * Copies a link that carries the plan, where the page opens such links. What became of it stands beneath the bar that this
 * is part of, so that what the bar holds stays where it is. Internal to `runnel-planner`.
 */
export class PlannerLink extends ViewElement {
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

      .status {
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

      .status.empty {
        display: contents;
      }

      button {
        border-color: var(--_line);
        font-size: var(--_size-small);
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

  /** The plan that the link holds: of another plan nothing is shown. */
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
    const say = plannerWords(readingOf(this.#plan.view).language);
    const hasLink = this.link !== '' && plan === this.#linked;
    return html`<div @focusout=${this.#onLeave} @keydown=${this.#onKey}>
      <button @click=${() => void this.#copy()}>${say.copyLink}</button>
      <div class=${hasLink ? 'status' : 'status empty'}>
        <div role="status">${hasLink ? html`<p class="small">${this.#status()}</p>` : nothing}</div>
        ${hasLink && !this.isCopied ? html`<input readonly aria-label=${say.link} .value=${this.link} />` : nothing}
      </div>
    </div>`;
  }

  /** What became of the link is no longer shown once somebody goes on to something else. */
  readonly #onLeave = ({ currentTarget, relatedTarget }: FocusEvent): void => {
    if (!(currentTarget as HTMLElement).contains(relatedTarget as Node | null)) this.link = '';
  };

  readonly #onKey = ({ key }: KeyboardEvent): void => {
    if (key === 'Escape') this.link = '';
  };

  #status(): string {
    const reader = readingOf(this.#plan.view);
    const say = plannerWords(reader.language);
    const copied = this.isCopied ? say.linkCopied : say.linkToCopy;
    return this.link.length <= LONG_LINK ? copied : `${copied} ${say.longLink(formatFor(reader), this.link.length)}`;
  }
}
