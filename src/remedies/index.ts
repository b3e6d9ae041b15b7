/** Plan edits that would mend what a notice or a mixed zone shows, each tried on the engine. */
export { remediesOf, searchRemedies } from './notices/remedies-of.ts';
export type { NoticeInPlan, Remedy, RemedyKind } from './notices/remedy.ts';
