import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { BRITISH_ENGLISH, type Language, US_ENGLISH } from '../../src/language/language.ts';
import { filesUnder, projectRoot } from '../tools/source-files.ts';
import { allWords } from './all-words.ts';
import { textsIn } from './texts-in.ts';

/** What fields of a plan file mean is said in English alone, in the file's JSON Schema, and is no area. */
const files = filesUnder('src/language/en', '.ts').filter((path) => !/\/plan-(log-)?fields(-[a-z-]+)?\.ts$/.test(path));

type AreaWords = (language: Language) => object;

interface Area {
  readonly key: string;
  /** The object that the file exports under the area's name. */
  readonly words: unknown;
  readonly of: AreaWords;
}

/** The areas that a file of `en/` exports, by what stands in it. */
async function areasOf(path: string): Promise<readonly Area[]> {
  const text = readFileSync(join(projectRoot, path), 'utf8');
  const module: Readonly<Record<string, unknown>> = await import(`../../src/language/en/${basename(path, '.ts')}.ts`);
  return [...text.matchAll(AREA)].map(([, of = '', key = '', name = '']) => ({
    key,
    words: module[name],
    of: module[of] as AreaWords,
  }));
}

/** `export const weekWords = area('week', week…`, or one that looks itself up: `… (areas?.['page'] ?? page)`. */
const AREA = /export const (\w+) = (?:area\(|[^\n]*areas\?\.\[)\s*'([\w-]+)'(?:,|\] \?\?)\s*(\w+)/g;

const areas = (await Promise.all(files.map(areasOf))).flat();

describe('the areas of English', () => {
  it.each(files)('%s exports one, whole and by its function', async (path) => {
    const [first, ...others] = await areasOf(path);
    expect(others).toEqual([]);
    expect(first?.words).toBeTypeOf('object');
    expect(first?.of(US_ENGLISH)).toBe(first?.words);
  });

  it('are all in en.ts or late-words.ts, under the keys that views ask for', () => {
    expect(areas.map(({ key }) => key).toSorted()).toEqual(Object.keys(allWords).toSorted());
    for (const { key, words } of areas) expect((allWords as Readonly<Record<string, unknown>>)[key], key).toBe(words);
  });
});

/** Words, and other conventions, that one English has and the other has not. */
const US_ONLY = wordsOf(
  ...[
    'liters?',
    '(?:milli|centi)meters?',
    'square meters?',
    'colors?',
    'neighbors?',
    'vapor',
    'molds?',
    'fiber',
    'gray',
  ],
  ...['license(?!-key)', 'fertilizers?', 'farther', 'faucets?', 'call 811', 'underground utilities'],
);
const BRITISH_ONLY = wordsOf(
  ...[
    'litres?',
    '(?:square )?(?:milli|centi)?metres?',
    'colours?',
    'neighbours?',
    'vapour',
    'moulds?',
    'fibre',
    'grey',
  ],
  ...['licence', 'fertilisers?', 'buried services'],
);

/** Words that both have, where the other one has another. */
const SHARED = wordsOf('meters?', 'taps?', 'further', 'a?round');

/** What is read and not shown takes both spellings. */
const READ = /\.typed\b|^csv\.weather/;

describe.each([
  ['US', US_ENGLISH, BRITISH_ONLY],
  ['British', BRITISH_ENGLISH, US_ONLY],
] as const)('%s English', (_name, language, foreign) => {
  it('has no word that only the other one has', () => {
    const found = areas
      .flatMap(({ key, of }) => textsIn(of(language), key))
      .filter(({ path, text }) => !READ.test(path) && text.search(foreign) >= 0);
    expect(found).toEqual([]);
  });
});

it('the two differ only in such words', () => {
  const neutral = (text = ''): string =>
    [US_ONLY, BRITISH_ONLY, SHARED].reduce((rest, words) => rest.replaceAll(words, '§'), text);
  const others = areas.flatMap(({ key, of }) => {
    const british = new Map(textsIn(of(BRITISH_ENGLISH), key).map(({ path, text }) => [path, text]));
    return textsIn(of(US_ENGLISH), key).filter(({ path, text }) => neutral(british.get(path)) !== neutral(text));
  });
  expect(others.map(({ path }) => path)).toEqual(OTHERWISE);
});

/** Messages that are other sentences in British English. */
const OTHERWISE: readonly string[] = ['cautions.full.digging'];

function wordsOf(...patterns: readonly string[]): RegExp {
  return new RegExp(`\\b(?:${patterns.join('|')})\\b`, 'gi');
}
