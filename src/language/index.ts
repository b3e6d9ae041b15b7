/** Languages: how a host registers its own, and what English says, the type of all others. */
export { en, type Words } from './en.ts';
export type { Format } from './format/format.ts';
export { registerLanguage } from './register-language.ts';
