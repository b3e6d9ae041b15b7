import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { circleFaults, importFaults, purityFaults, rootFaults, type SourceFile, sizeFaults } from './tools/floors.ts';
import { filesUnder, projectRoot } from './tools/source-files.ts';

const sources: readonly SourceFile[] = filesUnder('src', '.ts').map((path) => ({
  path,
  text: readFileSync(join(projectRoot, path), 'utf8'),
}));

describe('the house', () => {
  it('has sources to look at', () => {
    expect(sources.length).toBeGreaterThan(0);
  });

  it('imports downwards only', () => {
    expect(sources.flatMap(importFaults)).toEqual([]);
  });

  it('has no circle among its files', () => {
    expect(circleFaults(sources)).toEqual([]);
  });

  it('keeps the engine off the DOM, the clock and randomness', () => {
    expect(sources.flatMap(purityFaults)).toEqual([]);
  });

  it('keeps files short', () => {
    expect(sources.flatMap(sizeFaults)).toEqual([]);
  });

  it('keeps the root clear', () => {
    expect(rootFaults(readdirSync(projectRoot))).toEqual([]);
  });
});

describe('an import is a fault', () => {
  it.each([
    ['engine to plan', 'src/engine/balance.ts', "import { plan } from '../plan/plan.ts';"],
    ['of a type only', 'src/engine/balance.ts', "import type { Plan } from '../plan/plan.ts';"],
    ['as a type in place', 'src/plan/edit.ts', "export type Grid = import('../sheet/grid.ts').Grid;"],
    ['when it is re-exported', 'src/plan/index.ts', "export * from '../exchange/csv.ts';"],
    ['when it is loaded late', 'src/exchange/csv.ts', "export const load = () => import('../elements/planner.ts');"],
    ['for its effect alone', 'src/sheet/cell.ts', "import '../elements/planner.ts';"],
    ['exchange to sheet', 'src/exchange/csv.ts', "import { cell } from '../sheet/cell.ts';"],
    ['sheet to exchange', 'src/sheet/cell.ts', "import { csv } from '../exchange/csv.ts';"],
    ['elements to page', 'src/elements/week/define.ts', "import '../../page/runnel.ts';"],
    ['of Lit into page', 'src/page/runnel.ts', "import { html } from 'lit';"],
    ['page past the elements', 'src/page/runnel.ts', "import { plan } from '../plan/plan.ts';"],
    ['into the top', 'src/elements/planner.ts', "import { all } from '../index.ts';"],
    ['out of src', 'src/elements/planner.ts', "import { plan } from '../../demo/plan.ts';"],
    ['of a library into the engine', 'src/engine/balance.ts', "import { addDays } from 'date-fns';"],
    ['of Node into the engine', 'src/engine/balance.ts', "import { readFileSync } from 'node:fs';"],
    ['of Lit into plan', 'src/plan/edit.ts', "import { html } from 'lit';"],
    ['of a part of the grid into exchange', 'src/exchange/csv.ts', "import grid from 'handsontable/base';"],
    ['from a folder that is no floor', 'src/helpers/text.ts', 'export const empty = 0;'],
  ])('%s', (_name, path, text) => {
    expect(importFaults({ path, text })).toHaveLength(1);
  });

  it.each([
    ['within the engine', 'src/engine/line/lateral.ts', "import { head } from '../units.ts';"],
    [
      'plan to engine',
      'src/plan/read.ts',
      "import { days } from '../engine/calendar.ts'; import * as v from 'valibot';",
    ],
    [
      'sheet to plan',
      'src/sheet/cell.ts',
      "import { edit } from '../plan/edit.ts'; import grid from 'handsontable/base';",
    ],
    [
      'elements to sheet and exchange',
      'src/elements/a/a.ts',
      "import '../../sheet/a.ts'; import '../../exchange/a.ts';",
    ],
    ['page to elements, late', 'src/page/runnel.ts', "export const load = () => import('../elements/week/define.ts');"],
    ['the top to all', 'src/index.ts', "export * from './elements/planner.ts'; export * from './engine/season.ts';"],
    ['in a comment', 'src/engine/balance.ts', "// import { plan } from '../plan/plan.ts';"],
  ])('but not %s', (_name, path, text) => {
    expect(importFaults({ path, text })).toEqual([]);
  });
});

describe('a circle', () => {
  const file = (path: string, ...targets: readonly string[]): SourceFile => ({
    path,
    text: targets.map((target) => `import type { It } from '${target}';`).join('\n'),
  });

  it('is a fault over three files, types included', () => {
    const files = [file('src/a.ts', './b.ts'), file('src/b.ts', './sub/c.ts'), file('src/sub/c.ts', '../a.ts')];
    expect(circleFaults(files)).toEqual(['src/a.ts -> src/b.ts -> src/sub/c.ts -> src/a.ts is a circle']);
  });

  it('is not where two ways lead to one file', () => {
    expect(circleFaults([file('src/a.ts', './b.ts', './c.ts'), file('src/b.ts', './c.ts'), file('src/c.ts')])).toEqual(
      [],
    );
  });
});

describe('the engine is impure', () => {
  it.each([
    ['with the DOM', 'export const width = () => document.body.clientWidth;'],
    ['with a type of the DOM', 'export const draw = (on: HTMLElement) => on;'],
    ['with the global object', "export const now = globalThis['Date'];"],
    ['with the clock', 'export const today = () => Date.now();'],
    ['with a new date', 'export const today = () => new Date();'],
    ['with a stopwatch', 'export const start = performance.now();'],
    ['with randomness', 'export const noise = () => Math.random();'],
    ['with randomness by another spelling', "export const noise = () => Math['random']();"],
    ['with randomness taken apart', 'export const { random } = Math;'],
    ['with a key that is computed', 'export const seen = { [document.title]: 1 };'],
    ['with a timer', 'export const later = (task: () => void) => setTimeout(task, 1);'],
    ["with the machine's language", 'export const text = new Intl.NumberFormat();'],
  ])('%s', (_name, text) => {
    expect(purityFaults({ path: 'src/engine/balance.ts', text })).toHaveLength(1);
  });

  it.each([
    [
      'with a key or a member of that name',
      'export const a = (plan: { document: number }) => ({ window: plan.document });',
    ],
    ['with the word in a comment or text', "/** Not Date.now(). */ export const word = 'Math.random';"],
    ['with other mathematics', 'export const root = Math.sqrt(2);'],
  ])('but not %s', (_name, text) => {
    expect(purityFaults({ path: 'src/engine/balance.ts', text })).toEqual([]);
  });

  it('and other floors may look at the clock', () => {
    expect(purityFaults({ path: 'src/exchange/calendar.ts', text: 'export const stamp = () => Date.now();' })).toEqual(
      [],
    );
  });
});

describe('a file is too long', () => {
  const lines = (count: number): string => 'export {};\n'.repeat(count);

  it.each([
    ['src/engine/balance.ts', 250],
    ['src/elements/grid/grid.ts', 300],
    ['src/index.ts', 300],
  ])('%s beyond %i lines', (path, limit) => {
    expect(sizeFaults({ path, text: lines(limit) })).toEqual([]);
    expect(sizeFaults({ path, text: lines(limit + 1) })).toHaveLength(1);
  });

  it('but not a table of data', () => {
    expect(sizeFaults({ path: 'src/engine/plants/crops.data.ts', text: lines(1000) })).toEqual([]);
  });
});

it('a stray file at the root is a fault, a dot file is none', () => {
  expect(rootFaults(['package.json', 'src', '.biome.json', 'notes.txt', 'vite.config.ts'])).toHaveLength(2);
});
