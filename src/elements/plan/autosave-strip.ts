import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import {
  AUTOSAVE_OFF,
  type AutosaveChoice,
  type AutosaveNote,
  type Draft,
  type SavedCopy,
} from '../../autosave/report.ts';
import { autosaveWords } from '../../language/en/autosave.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import { type Reader, readerFor } from '../../language/reader.ts';
import { controls } from '../../look/controls.styles.ts';
import { tokens } from '../../look/tokens.styles.ts';
import { noteText } from './note-text.ts';

/** What a reader has to know, or to decide, about how the plan is saved. Internal to `runnel-plan`. */
export class AutosaveStrip extends LitElement {
  static override readonly styles = [
    tokens,
    controls,
    css`
      section {
        display: grid;
        gap: 0.5rem;
        outline: none;
      }

      .notes > *,
      li {
        display: flex;
        flex-wrap: wrap;
        gap: 0.4rem 0.75rem;
        align-items: baseline;
        margin-block: 0.4rem;
      }

      .notes > * {
        padding-inline-start: 0.75rem;
        border-inline-start: 4px solid var(--_ink);
      }

      .notes > .urgent {
        border-color: var(--_short);
      }

      .notes p {
        flex: 0 1 auto;
        max-inline-size: 60rem;
      }

      .notes .draft {
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

      .draft div {
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

  @property({ attribute: false }) report = AUTOSAVE_OFF;

  @property({ attribute: false }) locale = 'en';

  @property({ attribute: false }) choose: (choice: AutosaveChoice, of: string) => void = () => undefined;

  /** Id of the copy that is deleted at the next press. */
  @state() private unsure: string | undefined;

  /** Id of the draft that was copied last. */
  @state() private copied: string | undefined;

  #hadFocus = false;

  @query('section') private readonly section!: HTMLElement;

  get #reader(): Reader {
    // No message here has a quantity, so the units do not matter.
    return readerFor(this.locale, 'us');
  }

  get #words(): ReturnType<typeof autosaveWords> {
    return autosaveWords(this.#reader.language);
  }

  #choose(choice: AutosaveChoice, of: string): void {
    const isFirst = choice === 'delete-copy' && this.unsure !== of;
    this.unsure = isFirst ? of : undefined;
    this.copied = choice === 'copy-draft' ? of : undefined;
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
    const { notes, copies, drafts } = this.report;
    const words = this.#words;
    return html`<section aria-label=${words.title} tabindex="-1">
      <div class="notes" role="status" aria-atomic="false">
        ${repeat(
          notes,
          ({ code }) => code,
          (note) => this.#note(note),
        )}
        ${repeat(
          drafts,
          ({ id }) => id,
          (draft) => this.#draft(draft),
        )}
      </div>
      ${
        copies.length === 0
          ? nothing
          : html`<details>
            <summary>${words.copies(formatFor(this.#reader), copies.length)}</summary>
            <ul>
              ${repeat(
                copies,
                ({ id }) => id,
                (copy) => this.#copy(copy),
              )}
            </ul>
          </details>`
      }
    </section>`;
  }

  #note(note: AutosaveNote): TemplateResult {
    const { code, choices } = note;
    const isUrgent = code === 'not-saved' || code === 'conflict' || code === 'damaged';
    return html`<div class=${isUrgent ? 'urgent' : ''}>
      <p>${noteText(note, this.#reader)}</p>
      ${choices.map((choice) => this.#button(choice, code, this.#choiceWords(choice, note)))}
    </div>`;
  }

  #choiceWords(choice: AutosaveChoice, note: AutosaveNote): string {
    const { choices, onPage } = this.#words;
    return choice === 'other-tab' && 'isOnPage' in note && note.isOnPage ? onPage.choice : choices[choice];
  }

  #draft({ id, field, text }: Draft): TemplateResult {
    const words = this.#words;
    return html`<div class="draft">
      <p id=${id}>${words.draft(field)}</p>
      <textarea readonly rows="1" aria-label=${words.draftText} .value=${text}></textarea>
      <div>
        ${this.#button('copy-draft', id, this.copied === id ? words.copied : words.choices['copy-draft'], id)}
        ${this.#button('delete-draft', id, words.choices['delete-draft'], id)}
      </div>
    </div>`;
  }

  #copy({ id, name, saved }: SavedCopy): TemplateResult {
    const words = this.#words;
    const what =
      name === undefined || saved === undefined
        ? words.damagedCopy
        : words.copy(formatFor(this.#reader), isolated(name), saved);
    return html`<li>
      <span id=${id}>${what}</span>
      ${name === undefined ? nothing : this.#button('restore-copy', id, words.choices['restore-copy'], id)}
      ${this.#button('save-copy', id, words.choices['save-copy'], id)}
      ${this.#button('delete-copy', id, this.unsure === id ? words.deleteForGood : words.choices['delete-copy'], id)}
    </li>`;
  }

  #button(choice: AutosaveChoice, of: string, words: string, about?: string): TemplateResult {
    return html`<button aria-describedby=${about ?? nothing} @click=${() => this.#choose(choice, of)}>${words}</button>`;
  }
}
