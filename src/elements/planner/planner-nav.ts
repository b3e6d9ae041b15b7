import { css, html, LitElement, type TemplateResult } from 'lit';
import { plannerWords } from '../../language/en/planner.ts';
import { controls } from '../../look/controls.styles.ts';
import { tokens } from '../../look/tokens.styles.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { readingOf } from '../shared/plan-state.ts';
import { type PlannerPart, ShowPartEvent } from './show-part-event.ts';

const PARTS: readonly PlannerPart[] = ['grid', 'chart', 'trace', 'notices', 'week', 'mix', 'garden', 'files'];

/**
 * The way from one part of the planner to another. Internal to `runnel-planner`.
 *
 * @fires {ShowPartEvent} runnel-show-part - A part was chosen.
 */
export class PlannerNav extends LitElement {
  static override readonly styles = [
    tokens,
    controls,
    css`
      nav {
        display: flex;
        gap: 0 1.25rem;
        overflow-x: auto;
        padding-block: 0.25rem;
        border-block-end: 1px solid var(--_line);
      }

      button {
        flex: none;
        min-block-size: 1.75rem;
        padding-inline: 0;
        border: 0;
        color: var(--_water);
      }

      @media (pointer: coarse) {
        button {
          min-block-size: 2.75rem;
        }
      }

      @media print {
        nav {
          display: none;
        }
      }
    `,
  ];

  readonly #plan = new PlanConsumer(this);

  protected override render(): TemplateResult {
    const say = plannerWords(readingOf(this.#plan.view).language);
    return html`<nav aria-label=${say.parts}>
      ${PARTS.map(
        (part) => html`<button @click=${() => this.dispatchEvent(new ShowPartEvent(part))}>${say.part[part]}</button>`,
      )}
    </nav>`;
  }
}
