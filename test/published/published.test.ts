import { existsSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { filesUnder, projectRoot } from '../tools/source-files.ts';

const ENGINE = 'src/engine/';
const PAGE = readFileSync(join(projectRoot, 'test/published/README.md'), 'utf8');

/** The cells of every table line under the headings that `isWanted`. */
function rowsUnder(isWanted: (heading: string) => boolean): readonly (readonly string[])[] {
  return PAGE.split(/^## /m)
    .slice(1)
    .filter((section) => isWanted(section.split('\n')[0] ?? ''))
    .flatMap((section) => section.split('\n').filter((line) => line.startsWith('| ')))
    .map((line) => line.split(' | ').map((cell) => cell.replace(/^\||\|$/g, '').trim()))
    .filter((cells) => !cells[0]?.startsWith('-') && !HEADINGS.includes(cells[0] ?? ''));
}

const HEADINGS = ['Example', 'formula', 'module'];
const EXAMPLES = 'Worked examples of FAO-56';
const PLAIN = 'Without a published formula of their own';

const formulas = rowsUnder((heading) => heading !== EXAMPLES && heading !== PLAIN).map((cells) => ({
  formula: cells[0] ?? '',
  module: codeIn(cells[1])[0] ?? '',
  source: cells[2] ?? '',
  checks: codeIn(cells[3]),
  tolerance: cells[4] ?? '',
  fromMemory: cells[5] ?? '',
}));
const plain = rowsUnder((heading) => heading === PLAIN).map((cells) => codeIn(cells[0])[0] ?? '');
const examples = rowsUnder((heading) => heading === EXAMPLES).map((cells) => ({
  number: cells[0] ?? '',
  check: codeIn(cells[2])[0] ?? '',
}));
const modules = filesUnder('src/engine', '.ts').map((path) => path.slice(ENGINE.length));

/** The names between backticks. */
function codeIn(cell = ''): readonly string[] {
  return [...cell.matchAll(/`([^`]+)`/g)].map(([, name]) => name ?? '');
}

function textOf(path: string): string {
  return existsSync(join(projectRoot, path)) ? readFileSync(join(projectRoot, path), 'utf8') : '';
}

/** A module's text as one line, so that words broken over two comment lines are found. */
function proseOf(module: string): string {
  return textOf(ENGINE + module).replace(/\s*\n\s*(\*|\/\/)?\s*/g, ' ');
}

describe('the page of published checks', () => {
  it('is read: dozens of formulas, and the modules without one', () => {
    expect(formulas.length).toBeGreaterThan(80);
    expect(plain.length).toBeGreaterThan(10);
  });

  it('lists every module of the engine, with a formula or as one without', () => {
    const listed = new Set([...formulas.map(({ module }) => module), ...plain]);
    const isListed = (module: string) =>
      listed.has(module) || plain.some((row) => row.endsWith('/') && module.startsWith(row));
    expect(modules.filter((module) => !isListed(module))).toEqual([]);
  });

  it('lists nothing that is not there, and no module twice', () => {
    const rows = [...formulas.map(({ module }) => module), ...plain.filter((row) => !row.endsWith('/'))];
    expect(rows.filter((module) => !modules.includes(module))).toEqual([]);
    expect(rows.filter((module, index) => rows.indexOf(module) !== index)).toEqual([]);
  });

  it('has no module among those without a formula that names the source of one', () => {
    const named = plain.filter((row) => !row.endsWith('/') && /Source:|FAO-56 eq\.|from memory/.test(proseOf(row)));
    expect(named).toEqual([]);
  });

  it('names for every formula its source, a check that is there, and a tolerance', () => {
    const faulty = formulas.filter(({ formula, source, checks, tolerance }) => {
      return (
        formula === '' ||
        source === '' ||
        tolerance === '' ||
        checks.length === 0 ||
        checks.some((check) => textOf(check) === '')
      );
    });
    expect(faulty).toEqual([]);
  });

  it('names no unit check that neither mirrors nor imports its module', () => {
    const mirrorOf = (module: string) => `test/engine/${module.replace(/\.ts$/, '.test.ts')}`;
    const strangers = formulas.flatMap(({ module, checks }) =>
      checks
        .filter((check) => check.startsWith('test/engine/') && check !== mirrorOf(module))
        .filter((check) => !textOf(check).includes(basename(module)))
        .map((check) => `${check} knows nothing of ${module}`),
    );
    expect(strangers).toEqual([]);
  });

  it('says of every module whether something in it is from memory, as the module does', () => {
    const wrong = formulas.filter(({ module, fromMemory }) => {
      const says = /from memory|fromMemory: true/.test(proseOf(module));
      return !['no', 'in part', 'yes'].includes(fromMemory) || (fromMemory !== 'no') !== says;
    });
    expect(wrong.map(({ module, fromMemory }) => `${module}: ${fromMemory}`)).toEqual([]);
  });

  it('has every worked example in the test that it names', () => {
    const missing = examples.filter(
      ({ number, check }) => !new RegExp(`Ex(ample|\\.) ${number}\\b`).test(textOf(check)),
    );
    expect(missing).toEqual([]);
    for (const number of ['2', '3', '5', '8', '9', '10', '14', '15', '17', '18', '20', '28', '36', '37']) {
      expect(examples.map((example) => example.number)).toContain(number);
    }
  });
});
