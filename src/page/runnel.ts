/**
 * The one script of a page: `<script type="module" src="runnel.js"></script>`. A script of the page's own may import it from the
 * same address to register a language: `import { registerLanguage } from './runnel/runnel.js'`.
 */
import { watchPage } from './watch-page.ts';

export { registerLanguage } from '../elements/shared/page-language.ts';

if (globalThis.document !== undefined) watchPage(document);
