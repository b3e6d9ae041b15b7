/** What was typed into the week's fields and refused: it stays in its field, with the reason, until it is put right. */
import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { describeFault } from '../../language/describe-fault.ts';
import { doubtsWords } from '../../language/en/doubts.ts';
import { faultListWords } from '../../language/en/fault-list.ts';
import type { Reader } from '../../language/reader.ts';
import type { EditResult } from '../../plan/edits/apply-edit.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Fault } from '../../plan/reading/fault.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { onceAnswered, type PlanConsumer } from '../shared/plan-consumer.ts';

/** Sends an edit up; `taken` is called once it is accepted. */
export type SendEdit = (edit: Edit, taken?: () => void) => void;

interface Refused {
  /** As typed. */
  readonly text: string;
  readonly why: (reader: Reader) => string;
  /** What saves it all the same, where it was only asked about. */
  readonly keep?: (() => void) | undefined;
}

interface Said {
  /** Asked before the edit is sent. */
  readonly doubt?: string | undefined;
  /** Told once it is accepted. */
  readonly remark?: string | undefined;
}

interface Sent {
  readonly key: string;
  readonly text: string;
  readonly remark: string | undefined;
}

export class WeekEntries {
  /** What was chosen beside a field that is still empty, by the field's key. */
  readonly chosen = new Map<string, string>();
  readonly #plan: PlanConsumer;
  readonly #update: () => void;
  readonly #refused = new Map<string, Refused>();
  /** What became of the last entry, for as long as the plan is the one that it made. */
  #remarked: { readonly key: string; readonly remark: string; readonly after: Plan } | undefined;
  #told: readonly Fault[] = [];
  #documentId: number | undefined;

  constructor(plan: PlanConsumer, update: () => void) {
    this.#plan = plan;
    this.#update = update;
  }

  /** Before each drawing: what was refused belongs to the plan in which it was typed. */
  follow(): void {
    const { documentId } = this.#plan.view;
    if (documentId !== this.#documentId) {
      this.#refused.clear();
      this.chosen.clear();
    }
    this.#documentId = documentId;
  }

  refused(key: string): Refused | undefined {
    return this.#refused.get(key);
  }

  /** Why the last edit was refused, unless a field says so. */
  get faults(): readonly Fault[] {
    return this.#plan.refused === this.#told ? [] : this.#plan.refused;
  }

  refuse(key: string, text: string, why: Refused['why']): void {
    this.#refused.set(key, { text, why });
    this.#update();
  }

  /** Where there is a doubt it is asked about first: the text stays in its field, with a button that sends the edit. */
  send(key: string, text: string, edit: Edit, { doubt, remark }: Said = {}): void {
    if (doubt !== undefined) {
      this.#refused.set(key, { text, why: () => doubt, keep: () => this.send(key, text, edit, { remark }) });
      this.#update();
    } else onceAnswered(this.#plan.edit(edit), (result) => this.#answered({ key, text, remark }, result));
  }

  /** What became of what was entered there last; undefined where that is plain, or no longer so. */
  remark(key: string): string | undefined {
    const last = this.#remarked;
    return last?.key === key && last.after === this.#plan.view.plan ? last.remark : undefined;
  }

  #answered({ key, text, remark }: Sent, result: EditResult): void {
    if (result.ok) {
      this.#remarked = remark === undefined ? undefined : { key, remark, after: result.plan };
      this.take(key);
      return;
    }
    this.#told = result.faults;
    this.refuse(key, text, (reader) =>
      result.faults
        .map((fault) => faultListWords(reader.language).expected(describeFault(fault, reader).expected))
        .join(' '),
    );
  }

  /** Shows what the plan says again. */
  take(key: string): void {
    this.#refused.delete(key);
    this.#update();
  }
}

export interface EntryField {
  /** Unlike any other of the page. */
  readonly key: string;
  readonly label: string;
  /** As the plan has it. */
  readonly text: string;
  readonly unit: string;
  /** What becomes of a typed text: an edit, nothing, or why not, in the language of the page. */
  readonly read: (text: string) => Read;
}

export type Read =
  | ({ readonly kind: 'edit'; readonly edit: Edit } & Said)
  | { readonly kind: 'same' }
  | { readonly kind: 'refused'; readonly why: string };

export function entryField(
  { key, label, text, unit, read }: EntryField,
  entries: WeekEntries,
  reader: Reader,
): TemplateResult {
  const refused = entries.refused(key);
  const changed = (event: Event) => {
    const typed = (event.target as HTMLInputElement).value;
    const entry = read(typed);
    if (entry.kind === 'edit') entries.send(key, typed, entry.edit, entry);
    else if (entry.kind === 'same') entries.take(key);
    else entries.refuse(key, typed, () => entry.why);
  };
  return html`<span class="entry"
    ><input name=${key} inputmode="decimal" autocomplete="off" aria-label=${label}
      aria-invalid=${refused === undefined ? nothing : 'true'} aria-describedby=${`${key}-why`}
      .value=${live(refused?.text ?? text)} @change=${changed} /><span>${unit}</span>
    ${whyTemplate(key, entries, reader)}</span
  >`;
}

/** Why the text in a field is not saved, and where it was only asked about what saves it. */
export function whyTemplate(key: string, entries: WeekEntries, reader: Reader): TemplateResult {
  const refused = entries.refused(key);
  return html`<span class="refused" id=${`${key}-why`} role="alert" ?hidden=${refused === undefined}>${refused?.why(reader)}
    ${refused?.keep === undefined ? nothing : html`<button class="plain" name=${`${key}-keep`} @click=${refused.keep}>${doubtsWords(reader.language).keep}</button>`}</span>`;
}
