import { html, type TemplateResult } from 'lit';

export interface FileButton {
  readonly words: string;
  /** Kinds of file, as an input's `accept` has them. */
  readonly accept: string;
  readonly onFile: (file: File) => void;
}

/** A button that asks the reader for a file. The field behind it is out of sight, since no style reaches its words. */
export function fileButton({ words, accept, onFile }: FileButton): TemplateResult {
  const ask = (event: Event) => {
    const field = (event.currentTarget as Element).nextElementSibling;
    if (field instanceof HTMLInputElement) field.click();
  };
  const chosen = (event: Event) => {
    const field = event.currentTarget as HTMLInputElement;
    const file = field.files?.[0];
    // The same file may be chosen again, once it is put right.
    field.value = '';
    if (file !== undefined) onFile(file);
  };
  return html`<button @click=${ask}>${words}</button>
    <input type="file" accept=${accept} tabindex="-1" aria-label=${words} @change=${chosen} hidden />`;
}
