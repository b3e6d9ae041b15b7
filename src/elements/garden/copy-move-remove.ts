/** The buttons that copy, move and remove a zone or planting as a whole. */
import { html, nothing, type TemplateResult } from 'lit';
import { gardenWords as words } from '../shared/words/garden-words.ts';
import type { FormController } from './form-controller.ts';

export interface CopyMoveRemove {
  readonly name: string;
  readonly index: number;
  readonly count: number;
  readonly form: FormController;
  readonly copy: () => void;
  readonly move: (to: number) => void;
  readonly remove: () => void;
}

export function copyMoveRemove({
  name,
  index,
  count,
  form,
  copy,
  move,
  remove,
}: CopyMoveRemove): TemplateResult | typeof nothing {
  if (form.readOnly) return nothing;
  const action = (label: string, act: () => void, disabled = false) =>
    html`<button aria-label=${words.of(label, name)} ?disabled=${disabled} @click=${act}>${label}</button>`;
  return html`<div class="actions">
    ${action(words.copy, copy)} ${action(words.up, () => move(index - 1), index === 0)}
    ${action(words.down, () => move(index + 1), index === count - 1)} ${action(words.remove, remove)}
  </div>`;
}
