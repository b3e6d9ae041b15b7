/** A step of a trace in words. It brings all words of the trace: import it where they are shown, or late. */
import type { LabelKinds } from '../explain/trace/label-kinds.ts';
import type { SourceNotes } from '../explain/trace/source-notes.ts';
import type { StepKinds } from '../explain/trace/step-kinds.ts';
import type { TraceCodes } from '../explain/trace/trace-codes.ts';
import type { CodedFigure, TraceFigure, TraceSource, TraceStep, TraceValue } from '../explain/trace/trace-step.ts';
import { traceBalanceWords } from './en/trace-balance.ts';
import { traceCheckWords } from './en/trace-check.ts';
import { traceGroundWords } from './en/trace-ground.ts';
import { traceGroundLabelWords } from './en/trace-ground-labels.ts';
import { traceLabelWords } from './en/trace-labels.ts';
import { traceMinutesWords } from './en/trace-minutes.ts';
import { traceNeedWords } from './en/trace-need.ts';
import { traceValueWords } from './en/trace-values.ts';
import { traceWeatherWords } from './en/trace-weather.ts';
import { type Format, formatFor } from './format/format.ts';
import { isolated, isolatedText } from './format/isolated.ts';
import { formatSpelledOut } from './format/number.ts';
import { withUnit } from './format/quantity.ts';
import type { Language } from './language.ts';
import { sayOne, sayVaried } from './messages.ts';
import type { Reader } from './reader.ts';
import type { StepText, StepTexts, TraceLabels, TraceValueWords } from './trace-words.ts';

export interface DescribedStep {
  readonly title: string;
  /** One plain sentence. */
  readonly says: string;
  /** In the words and symbols of the labels. */
  readonly formula: string;
  readonly source: string;
  readonly inputs: readonly DescribedInput[];
  readonly result: string;
}

export interface DescribedInput {
  readonly label: string;
  /** In the plan's units. */
  readonly value: string;
  /** Whether the value is in words and no number. */
  readonly isWords: boolean;
}

/** What a step says to a reader: its title, one sentence, and how its result follows from its inputs, and from which source. */
export function describeStep(step: TraceStep, reader: Reader): DescribedStep {
  const { language } = reader;
  const format = formatFor(reader);
  const labels = labelTexts(language);
  const values = traceValueWords(language);
  return {
    ...textsOf(step.id, step, stepTexts(language), format),
    source: step.source.map((source) => sourceText(source, values, format)).join('; '),
    inputs: step.inputs.map((input) => describeInput(input, labels, values, format)),
    result: figureText(step.result, values, format),
  };
}

/** The groups in which steps stand, in the order in which they are worked out. */
export const STEP_GROUPS = ['weather', 'need', 'minutes', 'check'] as const;

export type StepGroup = (typeof STEP_GROUPS)[number];

/** The group of a kind of step. */
export function stepGroup(id: TraceStep['id'], language: Language): StepGroup {
  if (id in traceWeatherWords(language)) return 'weather';
  const { need, minutes } = traceGroundWords(language);
  if (id in traceNeedWords(language) || id in need) return 'need';
  return id in traceMinutesWords(language) || id in minutes ? 'minutes' : 'check';
}

const textsByLanguage = new WeakMap<Language, StepTexts<StepKinds>>();

function stepTexts(language: Language): StepTexts<StepKinds> {
  let texts = textsByLanguage.get(language);
  if (texts === undefined) {
    texts = {
      ...traceWeatherWords(language),
      ...traceNeedWords(language),
      ...traceMinutesWords(language),
      ...traceCheckWords(language),
      ...traceGroundWords(language).need,
      ...traceGroundWords(language).minutes,
      ...traceBalanceWords(language),
    };
    textsByLanguage.set(language, texts);
  }
  return texts;
}

const labelsByLanguage = new WeakMap<Language, TraceLabels>();

function labelTexts(language: Language): TraceLabels {
  const known = labelsByLanguage.get(language) ?? { ...traceLabelWords(language), ...traceGroundLabelWords(language) };
  labelsByLanguage.set(language, known);
  return known;
}

function textsOf<Id extends keyof StepKinds>(
  id: Id,
  about: StepKinds[Id],
  texts: StepTexts<StepKinds>,
  format: Format,
): Pick<DescribedStep, 'title' | 'says' | 'formula'> {
  const text: StepText<StepKinds[Id]> = texts[id];
  return {
    title: sayVaried<StepKinds[Id]>(text.title, format, about),
    says: sayVaried<StepKinds[Id]>(text.says, format, about),
    formula: sayVaried<StepKinds[Id]>(text.formula, format, about),
  };
}

function sourceText(source: TraceSource, { sources }: TraceValueWords, format: Format): string {
  return typeof source === 'string'
    ? isolatedText(source)
    : sayOne<SourceNotes, keyof SourceNotes>(
        sources,
        source.id,
        format,
        'text' in source ? { ...source, text: isolatedText(source.text) } : source,
      );
}

function describeInput(
  input: TraceValue,
  labels: TraceLabels,
  values: TraceValueWords,
  format: Format,
): DescribedInput {
  const label = 'name' in input.label ? { ...input.label, name: isolated(input.label.name) } : input.label;
  return {
    label: sayOne<LabelKinds, keyof LabelKinds>(labels, label.id, format, label),
    value: figureText(input, values, format),
    isWords: typeof input.value !== 'number',
  };
}

function figureText(figure: TraceFigure, { units, codes }: TraceValueWords, format: Format): string {
  if ('quantity' in figure) return format.quantity(figure.value, figure.quantity);
  if ('codes' in figure) return codesText(figure, codes, format);
  if (figure.unit === 'weekdays') return format.list(figure.value.map(format.weekday));
  const { value, unit, digits } = figure;
  switch (unit) {
    case undefined:
      return format.number(value, digits);
    case 'share':
      return format.percent(value);
    case 'date':
      return format.day(value, 'full');
    case 'minutes':
      return formatSpelledOut(value, 'minute', format.reader.locale, digits);
    case 'days':
      return formatSpelledOut(value, 'day', format.reader.locale, digits);
    default:
      return withUnit(format.number(value, digits), units[unit]);
  }
}

function codesText({ codes: list, value }: CodedFigure, codes: TraceValueWords['codes'], format: Format): string {
  const all: readonly TraceCodes[typeof list][] = typeof value === 'string' ? [value] : value;
  const words: Readonly<Record<string, string>> = codes[list];
  return format.list(all.map((each) => words[each] ?? each));
}
