import type { Words } from './en.ts';
import { registerAreas } from './languages.ts';
import type { LateWords } from './late-words.ts';

/** For each late part of the page a function that gives its words, at once or as a promise. */
export type LateLoads = { readonly [Part in keyof LateWords]?: () => LateWords[Part] | Promise<LateWords[Part]> };

/**
 * Makes another language known, before or after the elements start: pages whose `lang` (or `locale`) asks for it get it.
 *
 * `tag`: BCP 47, `es` or `es-MX`; a page in `es-MX` gets `es` where nothing closer is registered. `load`: gives all its words,
 * at once or as a promise; it is called when a page first asks. `late`: what only some pages say, called when one of them first does;
 * a part that is left out is said in English. Throws a RangeError where the tag is none.
 *
 * ```js
 * registerLanguage('es', () => import('./runnel-es.js').then(({ es }) => es), {
 *   trace: () => import('./runnel-es-trace.js').then(({ trace }) => trace),
 * });
 * ```
 */
export function registerLanguage(tag: string, load: () => Words | Promise<Words>, late: LateLoads = {}): void {
  registerAreas(tag, load, late);
}
