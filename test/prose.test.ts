/** What a person reads stands in `src/language/en` and nowhere else in the sources. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { proseIn } from './tools/prose.ts';
import { filesUnder, projectRoot } from './tools/source-files.ts';

const ENGLISH = 'src/language/en/';

const proseOf = (path: string) => proseIn(path, readFileSync(join(projectRoot, path), 'utf8'));

it('stands in no source outside the language', () => {
  const others = filesUnder('src', '.ts').filter((path) => !path.startsWith(ENGLISH));
  expect(others.length).toBeGreaterThan(300);
  expect(others.flatMap(proseOf)).toEqual([]);
});

it('is found where it stands', () => {
  const english = filesUnder(ENGLISH, '.ts').flatMap(proseOf);
  expect(english.length).toBeGreaterThan(1000);
});
