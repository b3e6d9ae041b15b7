import type { Words } from './en.ts';
import { registerAreas } from './languages.ts';

/**
 * Makes another language known, before or after the elements start: pages whose `lang` (or `locale`) asks for it get it.
 *
 * `tag`: BCP 47, `es` or `es-MX`; a page in `es-MX` gets `es` where nothing closer is registered. `load`: gives all its words,
 * at once or as a promise; it is called when a page first asks. Throws a RangeError where the tag is none.
 *
 * ```js
 * registerLanguage('es', () => import('./runnel-es.js').then(({ es }) => es));
 * ```
 */
export function registerLanguage(tag: string, load: () => Words | Promise<Words>): void {
  registerAreas(tag, load);
}
