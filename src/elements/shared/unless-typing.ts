/** The value of a field that a person may be typing into while the form around it is drawn anew. */
import { noChange } from 'lit';
import { Directive, directive, type ElementPart, type PropertyPart } from 'lit/directive.js';

/** Fields with a text that is not entered yet. */
const typed = new WeakSet<Element>();

const start = ({ currentTarget }: Event) => typed.add(currentTarget as Element);
const end = ({ currentTarget }: Event) => typed.delete(currentTarget as Element);

/** A browser calls every key in a date or a time a change. */
const isEnteredByChange = (field: Element) => !['date', 'time'].includes((field as HTMLInputElement).type);

class UnlessTyping extends Directive {
  #field: Element | undefined;

  render(value: string): unknown {
    return value;
  }

  override update({ element }: PropertyPart | ElementPart, [value]: [string]): unknown {
    const field = element as HTMLInputElement;
    if (this.#field !== field) {
      this.#field = field;
      field.addEventListener('input', start);
      field.addEventListener('blur', end);
      if (isEnteredByChange(field)) field.addEventListener('change', end);
    }
    if (!typed.has(field) && field.value !== value) field.value = value;
    return noChange;
  }
}

/** For `.value` of an input: shows the text whatever stands there, but for what is typed and not entered, which stays. */
export const unlessTyping = directive(UnlessTyping);
