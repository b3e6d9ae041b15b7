/** Languages: how a host registers its own, what English says, the type of all others; edits, faults and traces in words. */
export { describeEdit } from './describe-edit.ts';
export { describeFault, type FaultText } from './describe-fault.ts';
export { type DescribedInput, type DescribedStep, describeStep } from './describe-step.ts';
export { describeVersionChange } from './describe-version-change.ts';
export { en, type Words } from './en.ts';
export type { Format } from './format/format.ts';
export { type LateWords, lateWords } from './late-words.ts';
export { type Reader, readerFor } from './reader.ts';
export { type LateLoads, registerLanguage } from './register-language.ts';
