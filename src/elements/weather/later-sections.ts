/** What stands at the end, and what is shown after a press: it comes after the rest. */
export { filePreview } from './file-preview.ts';
export { UnusualWeeks } from './unusual-weeks.ts';
