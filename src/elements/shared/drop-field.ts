import { css, html, type LitElement, type TemplateResult } from 'lit';
import { adoptStyles } from './adopt-styles.ts';

const dropStyles = css`
  .drop {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem 0.75rem;
    align-items: center;
    margin-block: 0.35rem;
    padding: 0.75rem;
    border: 1px dashed var(--_quiet);
    border-radius: 0.4rem;
  }

  .over {
    border-style: solid;
    border-color: var(--_ink);
    background: color-mix(in oklab, var(--_ink) 10%, var(--_paper));
  }
`;

/** A field that a file may be dropped on; it shows while one is held over it. */
export class DropField {
  readonly #host: LitElement;
  readonly #onFile: (file: File) => void;
  #isDraggedOver = false;

  constructor(host: LitElement, onFile: (file: File) => void) {
    this.#host = host;
    this.#onFile = onFile;
    adoptStyles(host.renderRoot, dropStyles);
  }

  /** `content`: what stands in it, such as a button for whoever drops nothing. */
  render(content: unknown): TemplateResult {
    return html`<div part="drop" class=${this.#isDraggedOver ? 'drop over' : 'drop'} @dragover=${this.#onDrag} @dragleave=${this.#onDrag} @drop=${this.#onDrag}>${content}</div>`;
  }

  readonly #onDrag = (event: DragEvent): void => {
    if (!event.dataTransfer?.types.includes('Files')) return;
    event.preventDefault();
    const isOver = event.type === 'dragover';
    // It is told many times a second while a file hangs there.
    if (isOver !== this.#isDraggedOver) this.#host.requestUpdate();
    this.#isDraggedOver = isOver;
    const file = event.type === 'drop' ? event.dataTransfer.files[0] : undefined;
    if (file !== undefined) this.#onFile(file);
  };
}
