/** A page's script as it is shipped: what is imported late is a part of its own, and fetched when it is wanted. */
import { basename } from 'node:path';
import { build } from 'esbuild';
import type { BrowserContext } from 'playwright-core';
import { BLANK_PAGE, PAGE_SCRIPT } from '../../tools/browser-page.ts';

/** Texts by their names; the entry is named like its source. */
export type PageParts = ReadonlyMap<string, string>;

/** No host answers under it: whatever is asked there is answered here. */
const ADDRESS = 'http://bench.invalid/';

export async function pageParts(path: string): Promise<PageParts> {
  const { outputFiles } = await build({
    ...PAGE_SCRIPT,
    entryPoints: { entry: path },
    outdir: 'parts',
    splitting: true,
  });
  return new Map(outputFiles.map(({ path: place, text }) => [basename(place), text]));
}

/** Answers every request of a context with a blank page that loads the entry, or with one of its parts. */
export async function serveParts(context: BrowserContext, parts: PageParts): Promise<string> {
  const page = BLANK_PAGE.replace('</head>', '<script type="module" src="entry.js"></script></head>');
  await context.route(`${ADDRESS}**`, (route) => {
    const name = basename(new URL(route.request().url()).pathname);
    const part = parts.get(name);
    if (part !== undefined) return route.fulfill({ body: part, contentType: 'text/javascript' });
    return name === '' ? route.fulfill({ body: page, contentType: 'text/html' }) : route.fulfill({ status: 404 });
  });
  return ADDRESS;
}
