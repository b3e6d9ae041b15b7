/** The examples of README.md, run as they stand there. */
import { existsSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { ELEMENT_LOADERS } from '../../src/page/element-loaders.ts';
import { projectRoot } from '../tools/source-files.ts';

const readme = readFileSync(join(projectRoot, 'README.md'), 'utf8');

const examples = (language: string): readonly string[] =>
  [...readme.matchAll(new RegExp(`^\`\`\`${language}\n(.*?)^\`\`\``, 'gms'))].map((match) => match[1] ?? '');

it('shows a picture that is there and is small', () => {
  const path = readme.match(/!\[[^\]]+\]\(([^)]+\.png)\)/)?.[1] ?? '';
  expect(existsSync(join(projectRoot, path))).toBe(true);
  expect(statSync(join(projectRoot, path)).size).toBeLessThan(150 * 1024);
});

it('pastes only elements that the script knows', () => {
  const pasted = examples('html').join('\n');
  const tags = [...pasted.matchAll(/<(runnel-\w+)/g)].map((match) => match[1] ?? '');
  const divs = [...pasted.matchAll(/data-runnel="(\w+)"/g)].map((match) => `runnel-${match[1]}`);
  expect(tags.length).toBeGreaterThan(0);
  expect(divs.length).toBeGreaterThan(0);
  expect([...tags, ...divs].filter((tag) => !ELEMENT_LOADERS.has(tag))).toEqual([]);
});

it('says plainly what the grid’s licence asks of a club and of a business', () => {
  expect(readme).toMatch(/A club without commercial purpose.*\n?.*non-commercial-and-evaluation/);
  expect(readme).toMatch(/A business, a council.*has to buy a key/);
});
