/** The buttons that copy, move and remove a zone or planting as a whole. */
import { html, nothing, type TemplateResult } from 'lit';
import { gardenWords } from '../../language/en/garden.ts';
import { refusal } from './fields.ts';
import type { FormContext } from './form-context.ts';

export interface CopyMoveRemove {
  readonly name: string;
  /** Keys of the buttons, unlike any other of the page, and of a refusal (`actions`). */
  readonly key: (action: string) => string;
  /** Among its like, and how many of them there are. */
  readonly index: number;
  readonly count: number;
  readonly copy: () => void;
  /** Left out where it cannot be cut in two. */
  readonly split?: () => void;
  readonly move: (to: number) => void;
  readonly remove: () => void;
}

export function copyMoveRemove(
  { name, key, index, count, copy, split, move, remove }: CopyMoveRemove,
  context: FormContext,
): TemplateResult | typeof nothing {
  const { form, reader } = context;
  if (form.readOnly) return nothing;
  const { actions, actionOn } = gardenWords(reader.language);
  const button = (action: 'copy' | 'split' | 'up' | 'down' | 'remove', act: () => void, isDisabled = false) =>
    html`<button name=${key(action)} aria-label=${actionOn(actions[action], name)} ?disabled=${isDisabled} @click=${act}>${actions[action]}</button>`;
  return html`<div class="actions">
    ${button('copy', copy)} ${split === undefined ? nothing : button('split', split)} ${button('up', () => move(index - 1), index === 0)}
    ${button('down', () => move(index + 1), index === count - 1)} ${button('remove', remove)}
  </div>
  ${refusal(key('actions'), context)}`;
}
