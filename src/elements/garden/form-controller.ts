/** What was typed into the fields of a form: kept where it was refused, with the reason, until it is put right. */
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { describeFault } from '../../language/describe-fault.ts';
import { readerFor } from '../../language/reader.ts';
import { type EditResult, tryEdit } from '../../plan/edits/apply-edit.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Fault } from '../../plan/reading/fault.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { gardenWords } from '../shared/words/garden-words.ts';

export interface Refused {
  /** As typed. */
  readonly text: string;
  /** Why, in words. */
  readonly says: string;
}

export class FormController implements ReactiveController {
  readonly plan: PlanConsumer;
  readonly #host: ReactiveControllerHost;
  readonly #refused = new Map<string, Refused>();
  #documentId: number | undefined;

  constructor(host: ReactiveControllerHost & HTMLElement, plan: PlanConsumer) {
    this.#host = host;
    this.plan = plan;
    host.addController(this);
  }

  /** What was refused belongs to the plan in which it was typed, wherever the form is moved: another plan has no use for it. */
  hostUpdate(): void {
    const { documentId } = this.plan.view;
    if (documentId !== this.#documentId && this.#documentId !== undefined) this.#refused.clear();
    this.#documentId = documentId;
  }

  /** Lets go of what was refused in fields whose keys begin so: what they stood for is gone, or has another place. */
  forget(start: string): void {
    for (const key of this.#refused.keys()) if (key.startsWith(start)) this.#refused.delete(key);
  }

  get locale(): string {
    return this.plan.view.locale;
  }

  get readOnly(): boolean {
    return this.plan.view.readOnly;
  }

  refused(key: string): Refused | undefined {
    return this.#refused.get(key);
  }

  /** Keeps a text that is not an entry at all. The plan stays as it is. */
  refuse(key: string, text: string, says: string): void {
    this.#refused.set(key, { text, says });
    this.#host.requestUpdate();
  }

  /** What an edit's place asks for, in words; empty where the edit is none to refuse. */
  expected(edit: Edit): string {
    const { plan } = this.plan.view;
    const result = plan && tryEdit(plan, edit);
    return result?.ok === false ? gardenWords.asks(this.#expectedIn(result.faults)) : '';
  }

  #expectedIn(faults: readonly Fault[]): string {
    const reader = readerFor(this.locale, this.plan.view.plan?.units ?? 'us');
    return faults.map((fault) => describeFault(fault, reader).expected).join('; ');
  }

  /** Sends an edit; where it is refused, its text and the reason stand at the field. */
  commit(key: string, text: string, edit: Edit): EditResult {
    const result = this.plan.edit(edit);
    if (result.ok) {
      this.#refused.delete(key);
      this.#host.requestUpdate();
    } else this.refuse(key, text, gardenWords.expected(this.#expectedIn(result.faults)));
    return result;
  }
}
