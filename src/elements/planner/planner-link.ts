import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import { controls } from '../shared/controls.styles.ts';
import { formatNumber } from '../shared/format/number.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { tokens } from '../shared/tokens.styles.ts';
import { plannerWords } from '../shared/words/planner-words.ts';

/** Mail and chat programs cut addresses that are much longer. */
const LONG_LINK = 8000;

/** Copies a link that carries the plan, where the page opens such links. Internal to `runnel-planner`. */
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

      [role='status']:empty {
        display: none;
      }

      p {
        max-inline-size: 24rem;
      }

      input {
        inline-size: 16rem;
        max-inline-size: 100%;
        font: inherit;
      }
    `,
  ];

  readonly #plan = new PlanConsumer(this);

  @state() private link = '';

  @state() private isCopied = false;

  async #copy(): Promise<void> {
    const { plan } = this.#plan.view;
    if (plan === undefined) return;
    const { linkTo } = await import('../../exchange/link/link-to.ts');
    this.link = await linkTo(plan, location.href);
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
    return html`<button @click=${() => void this.#copy()}>${plannerWords.copyLink}</button>
      ${
        this.link === '' || this.isCopied
          ? nothing
          : html`<input readonly aria-label=${plannerWords.link} .value=${this.link} />`
      }
      <div role="status">${this.link === '' ? nothing : html`<p class="small">${this.#said()}</p>`}</div>`;
  }

  #said(): string {
    const said = this.isCopied ? plannerWords.linkCopied : plannerWords.linkToCopy;
    if (this.link.length <= LONG_LINK) return said;
    return `${said} ${plannerWords.longLink(formatNumber(this.link.length, this.#plan.view.locale))}`;
  }
}
