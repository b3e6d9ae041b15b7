import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { keepingWords } from '../../language/en/keeping-words.ts';
import { formatInstant } from '../../language/format/instant.ts';
import { controls } from '../../look/controls.styles.ts';
import { tokens } from '../../look/tokens.styles.ts';
import { type KeepingChoice, type KeepingNote, type LostText, NOT_KEPT, type PutAside } from '../../store/keeping.ts';

/** What a reader has to know, or to decide, about how the plan is kept. Internal to `runnel-plan`. */
export class KeepingStrip extends LitElement {
  static override readonly styles = [
    tokens,
    controls,
    css`
      section {
        display: grid;
        gap: 0.5rem;
        outline: none;
      }

      .said > *,
      li {
        display: flex;
        flex-wrap: wrap;
        gap: 0.4rem 0.75rem;
        align-items: baseline;
        margin-block: 0.4rem;
      }

      .said > * {
        padding-inline-start: 0.75rem;
        border-inline-start: 4px solid var(--_water);
      }

      .said > .urgent {
        border-color: var(--_short);
      }

      .said p {
        flex: 0 1 auto;
        max-inline-size: 60rem;
      }

      .said .typed {
        display: grid;
        gap: 0.4rem;
        border-color: var(--_short);
      }

      textarea {
        inline-size: 100%;
        max-inline-size: 40rem;
        box-sizing: border-box;
        padding: 0.3rem 0.5rem;
        border: 1px solid var(--_quiet);
        border-radius: 0.4rem;
        background: var(--_paper);
        color: var(--_ink);
        font: inherit;
        resize: none;
        field-sizing: content;
        max-block-size: 12rem;
      }

      .typed div {
        display: flex;
        gap: 0.75rem;
      }

      @media print {
        section {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) keeping = NOT_KEPT;

  @property({ attribute: false }) locale = 'en';

  @property({ attribute: false }) choose: (choice: KeepingChoice, of: string) => void = () => undefined;

  /** What is thrown away at the next press. */
  @state() private doomed: string | undefined;

  /** What was copied last. */
  @state() private copied: string | undefined;

  #hadFocus = false;

  @query('section') private readonly section!: HTMLElement;

  #choose(choice: KeepingChoice, of: string): void {
    const isFirst = choice === 'throw-away' && this.doomed !== of;
    this.doomed = isFirst ? of : undefined;
    this.copied = choice === 'copy-text' ? of : undefined;
    if (!isFirst) this.choose(choice, of);
  }

  protected override willUpdate(): void {
    this.#hadFocus = this.#hasFocus();
  }

  protected override updated(): void {
    // The button that had the keyboard is gone.
    if (this.#hadFocus && !this.#hasFocus()) this.section.focus();
  }

  #hasFocus(): boolean {
    return (this.shadowRoot?.activeElement ?? null) !== null;
  }

  protected override render(): TemplateResult {
    const { notes, putAside, typed } = this.keeping;
    return html`<section aria-label=${keepingWords.title} tabindex="-1">
      <div class="said" role="status" aria-atomic="false">
        ${repeat(
          notes,
          ({ kind }) => kind,
          (note) => this.#note(note),
        )}
        ${repeat(
          typed,
          ({ id }) => id,
          (text) => this.#typed(text),
        )}
      </div>
      ${
        putAside.length === 0
          ? nothing
          : html`<details>
            <summary>${keepingWords.putAside(putAside.length)}</summary>
            <ul>
              ${repeat(
                putAside,
                ({ id }) => id,
                (plan) => this.#aside(plan),
              )}
            </ul>
          </details>`
      }
    </section>`;
  }

  #note({ kind, text, choices }: KeepingNote): TemplateResult {
    const isUrgent = kind === 'not-kept' || kind === 'two-tabs' || kind === 'damaged';
    return html`<div class=${isUrgent ? 'urgent' : ''}>
      <p>${text}</p>
      ${choices.map((choice) => this.#button(choice, kind, keepingWords.choices[choice]))}
    </div>`;
  }

  #typed({ id, of, text }: LostText): TemplateResult {
    const words = keepingWords.choices;
    return html`<div class="typed">
      <p id=${id}>${keepingWords.typed(of)}</p>
      <textarea readonly rows="1" aria-label=${keepingWords.typedText} .value=${text}></textarea>
      <div>
        ${this.#button('copy-text', id, this.copied === id ? keepingWords.copied : words['copy-text'], id)}
        ${this.#button('forget-text', id, words['forget-text'], id)}
      </div>
    </div>`;
  }

  #aside({ id, name, saved }: PutAside): TemplateResult {
    const what =
      name === undefined || saved === undefined
        ? keepingWords.asideDamaged
        : keepingWords.aside(name, formatInstant(saved, this.locale));
    const words = keepingWords.choices;
    return html`<li>
      <span id=${id}>${what}</span>
      ${name === undefined ? nothing : this.#button('bring-back', id, words['bring-back'], id)}
      ${this.#button('save-aside', id, words['save-aside'], id)}
      ${this.#button('throw-away', id, this.doomed === id ? keepingWords.surely : words['throw-away'], id)}
    </li>`;
  }

  #button(choice: KeepingChoice, of: string, words: string, about?: string): TemplateResult {
    return html`<button aria-describedby=${about ?? nothing} @click=${() => this.#choose(choice, of)}>${words}</button>`;
  }
}
