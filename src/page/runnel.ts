/** The one script of a page: `<script type="module" src="runnel.js"></script>`. */
import { watchPage } from './watch-page.ts';

if (globalThis.document !== undefined) watchPage(document);
