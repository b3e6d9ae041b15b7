/** What a language has to say of a trace: for each kind of step, label, source, unit and code. */
import type { LabelKinds } from '../explain/trace/label-kinds.ts';
import type { SourceNotes } from '../explain/trace/source-notes.ts';
import type { TraceCodes } from '../explain/trace/trace-codes.ts';
import type { TraceUnit } from '../explain/trace/trace-step.ts';
import type { Messages, VariedMessage } from './messages.ts';

export interface StepText<Kind> {
  readonly title: VariedMessage<Kind>;
  /** One plain sentence for a gardener; no number in it needs a unit. */
  readonly says: VariedMessage<Kind>;
  /** How the result follows from the inputs, in the words and symbols of their labels. */
  readonly formula: VariedMessage<Kind>;
}

export type StepTexts<Kinds> = { readonly [Id in keyof Kinds]: StepText<Kinds[Id]> };

export type TraceLabels = Messages<LabelKinds>;

export interface TraceValueWords {
  /** Symbols beside a number. */
  readonly units: Readonly<Record<Extract<TraceUnit, 'kPa' | 'MJ/m²/d'>, string>>;
  readonly codes: { readonly [List in keyof TraceCodes]: Readonly<Record<TraceCodes[List], string>> };
  readonly sources: Messages<SourceNotes>;
}
