import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

const START = '<!-- paste: written by the build from the script that it has made -->';
const END = '<!-- /paste -->';

/** What a page's author pastes: the version in a comment, the script tied to its content, and the planner. */
export function linesToPaste(script: Uint8Array): string {
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
  return `<!-- Runnel ${version} -->
<script type="module" src="runnel/runnel.js"
  integrity="sha384-${createHash('sha384').update(script).digest('base64')}"></script>
<runnel-planner src="our-garden.runnel.json"
  license-key="non-commercial-and-evaluation"></runnel-planner>
`;
}

/** A README with these lines between its two markers. */
export function withLinesToPaste(readme: string, lines: string): string {
  const start = readme.indexOf(START);
  const end = readme.indexOf(END);
  if (start < 0 || end < start) throw new Error(`README.md has no part between ${START} and ${END}.`);
  return `${readme.slice(0, start + START.length)}\n\n\`\`\`html\n${lines}\`\`\`\n\n${readme.slice(end)}`;
}

/**
 * Writes them there. The hash is another one after nearly every change of a source, so it is written by the build and not
 * with each commit: it is that of the script which lies in dist/page when the build has run, and so of every release.
 */
export function writeLinesToPaste(lines: string): void {
  const file = join(root, 'README.md');
  writeFileSync(file, withLinesToPaste(readFileSync(file, 'utf8'), lines));
}
