/** The fields inside a plan's element in which something stands that is no edit yet. */
import { DraftEvent, KEPT_FIELD, WAITING_FIELD } from '../../sheet/draft-event.ts';
import type { Drafts } from './drafts.ts';
import { fieldName } from './field-name.ts';
import { isTyping } from './is-typing.ts';

type Field = HTMLInputElement | HTMLTextAreaElement;

export class DraftFields {
  readonly #host: HTMLElement;
  readonly #drafts: Drafts;
  readonly #open = new Set<Field>();
  /** The page goes: a field that is left now is not given up. */
  #isGoing = false;

  constructor(host: HTMLElement, drafts: Drafts) {
    this.#host = host;
    this.#drafts = drafts;
  }

  /** Listens until the signal ends it. */
  listen(signal: AbortSignal): void {
    this.#host.addEventListener('input', this.#onInput, { signal });
    this.#host.addEventListener('change', this.#onChange, { signal });
    this.#host.addEventListener(DraftEvent.type, this.#onDraft, { signal });
    // What closes a field may keep its event to itself on the way up.
    for (const type of ['focusout', 'keydown', 'click'] as const) {
      this.#host.addEventListener(type, this.#onMaybeLeft, { signal, capture: true });
    }
  }

  /** The plan was edited: with what stands in the field that has the keyboard, unless that waits for a button. */
  onEdit(): void {
    const isLeft = (field: Field) => (this.#isGoing || isFocused(field)) && !field.hasAttribute(WAITING_FIELD);
    for (const field of this.#open) if (isLeft(field)) this.#leave(field);
    this.#onMaybeLeft();
  }

  /** Whether the page goes. What is entered on the way still counts as entered. */
  set isGoing(isGoing: boolean) {
    this.#isGoing = isGoing;
  }

  readonly #onInput = (event: Event): void => {
    const [field] = event.composedPath();
    if (isField(field)) this.#put(field);
  };

  readonly #onDraft = (event: Event): void => {
    if (!(event instanceof DraftEvent)) return;
    if (event.field.isConnected) this.#put(event.field);
    else this.#leave(event.field);
  };

  /** Only a field outside shadow trees is heard here; the others are looked at when they are left. */
  readonly #onChange = (event: Event): void => {
    const [field] = event.composedPath();
    if (isField(field) && !field.hasAttribute(WAITING_FIELD) && !this.#isGoing) this.#leave(field);
  };

  /** Once whoever owns the field has had its turn. */
  readonly #onMaybeLeft = (): void => {
    if (this.#open.size > 0) setTimeout(() => this.#lookAtAll());
  };

  #lookAtAll(): void {
    if (this.#isGoing) return;
    for (const field of this.#open) if (!isUnfinished(field)) this.#leave(field);
  }

  #put(field: Field): void {
    this.#open.add(field);
    this.#drafts.put(field, fieldName(field, this.#host), field.value);
  }

  #leave(field: Field): void {
    this.#open.delete(field);
    this.#drafts.drop(field);
  }
}

/** Whether it says something that is neither entered nor given up. A window that is left leaves its field as it is. */
function isUnfinished(field: Field): boolean {
  if (!field.isConnected) return false;
  if (field.hasAttribute(WAITING_FIELD)) return field.value !== '';
  return field.getAttribute('aria-invalid') === 'true' || isFocused(field);
}

function isFocused(field: Field): boolean {
  const root = field.getRootNode();
  return (root instanceof Document || root instanceof ShadowRoot) && root.activeElement === field;
}

function isField(target: EventTarget | undefined): target is Field {
  if (!isTyping(target) || !('value' in (target as object))) return false;
  return (target as Field).type !== 'search' && !(target as Field).hasAttribute(KEPT_FIELD);
}
