/** What was typed into the fields of a form and refused: it stays in its field, with the reason, until it is put right. */
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { describeExpected } from '../../language/describe-fault.ts';
import { gardenWords } from '../../language/en/garden.ts';
import { formatFor } from '../../language/format/format.ts';
import { type Reader, readerFor } from '../../language/reader.ts';
import type { EditResult } from '../../plan/edits/apply-edit.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { expectationOf } from '../../plan/schema/expectation.ts';
import type { SchemaNode } from '../../plan/schema/walk.ts';
import { onceAnswered, type PlanConsumer } from '../shared/plan-consumer.ts';
import { FieldFacts } from './field-facts.ts';

export interface Refused {
  /** As typed. */
  readonly text: string;
  /** Why, in the words of whoever reads it. */
  readonly reason: (reader: Reader) => string;
}

export class FormController implements ReactiveController {
  readonly #plan: PlanConsumer;
  readonly #host: ReactiveControllerHost;
  readonly facts = new FieldFacts();
  readonly #refused = new Map<string, Refused>();
  #documentId: number | undefined;

  constructor(host: ReactiveControllerHost & HTMLElement, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    host.addController(this);
  }

  /** What was refused belongs to the plan in which it was typed, wherever the form is moved: another plan has no use for it. */
  hostUpdate(): void {
    const { documentId } = this.#plan.view;
    if (documentId !== this.#documentId && this.#documentId !== undefined) this.#refused.clear();
    this.#documentId = documentId;
  }

  /** Lets go of what was refused in fields whose keys begin so: what they stood for is gone, or has another index. */
  forget(start: string): void {
    for (const key of this.#refused.keys()) if (key.startsWith(start)) this.#refused.delete(key);
  }

  get readOnly(): boolean {
    return this.#plan.view.readOnly;
  }

  refused(key: string): Refused | undefined {
    return this.#refused.get(key);
  }

  /** Shows a text that is not an entry at all as refused. The plan stays as it is. */
  refuse(key: string, text: string, reason: Refused['reason']): void {
    this.#refused.set(key, { text, reason });
    this.#host.requestUpdate();
  }

  /** What a field of this schema takes, in words; empty without a plan. */
  takes(schema: SchemaNode): string {
    const { plan, locale } = this.#plan.view;
    if (plan === undefined) return '';
    const reader = readerFor(locale, plan.units);
    const expected = describeExpected(expectationOf(schema, schema.type), reader);
    return gardenWords(reader.language).takes(formatFor(reader), [expected]);
  }

  /** Sends an edit; where it is refused, its text and the reason stand at the field. `taken` is called where it is accepted. */
  send(key: string, text: string, edit: Edit, taken?: () => void): void {
    onceAnswered(this.#plan.edit(edit), (result) => {
      this.#show(key, text, result);
      if (result.ok) taken?.();
    });
  }

  #show(key: string, text: string, result: EditResult): void {
    if (result.ok) this.#refused.delete(key);
    else {
      const { faults } = result;
      this.refuse(key, text, (reader) =>
        gardenWords(reader.language).refused.expected(
          formatFor(reader),
          faults.map((fault) => describeExpected(fault, reader)),
        ),
      );
    }
    this.#host.requestUpdate();
  }
}
