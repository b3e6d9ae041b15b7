import { expect, it } from 'vitest';
import { type Bundle, withoutIdleImports } from '../../.build/steps/idle-imports.ts';

type Files = Readonly<Record<string, { readonly bare?: string; readonly late?: string; readonly named?: string }>>;

/** Files named by a letter, the entry `e`, with what each imports. */
function bundleOf(files: Files): Bundle {
  const paths = (names = '', kind: 'import-statement' | 'dynamic-import') =>
    [...names].map((name) => ({ path: `out/${name}.js`, kind }));
  const made = Object.entries(files).map(([name, { bare = '', late, named = '' }]) => {
    const text = [...bare, ...named].map((each) => `import${named.includes(each) ? '{n}from' : ''}"./${each}.js";`);
    const imports = [...paths(bare + named, 'import-statement'), ...paths(late, 'dynamic-import')];
    return { name: `out/${name}.js`, text: text.join(''), imports };
  });
  const inputs = { 'src/a.ts': { bytesInOutput: 1 } };
  const outputs = made.map(({ name, imports }) => [name, { bytes: 1, inputs, imports, exports: [] }] as const);
  return {
    errors: [],
    warnings: [],
    mangleCache: undefined,
    metafile: { inputs: {}, outputs: Object.fromEntries(outputs) },
    outputFiles: made.map(({ name, text }) => ({ path: `/root/${name}`, text, hash: '', contents: new Uint8Array() })),
  } as unknown as Bundle;
}

/** The text of file `l` once idle imports are out. */
const textOfLate = (files: Files, entries = 'e'): string | undefined =>
  withoutIdleImports(
    bundleOf(files),
    [...entries].map((name) => `out/${name}.js`),
  ).outputFiles.find(({ path }) => path.endsWith('/l.js'))?.text;

it('a late part does not import without a name what has run before it', () => {
  expect(textOfLate({ e: { bare: 'a', late: 'l' }, a: {}, b: {}, l: { bare: 'ab' } })).toBe('import"./b.js";');
  expect(textOfLate({ e: { named: 'a', late: 'p' }, a: {}, p: { late: 'l' }, l: { bare: 'a' } })).toBe('');
});

it('it imports what it uses, and what has run before it only for some of those who load it', () => {
  expect(textOfLate({ e: { bare: 'a', late: 'l' }, a: {}, l: { named: 'a' } })).toBe('import{n}from"./a.js";');
  const some = { e: { late: 'pq' }, p: { bare: 'a', late: 'l' }, q: { late: 'l' }, a: {}, l: { bare: 'a' } };
  expect(textOfLate(some)).toBe('import"./a.js";');
  expect(textOfLate({ ...some, q: { bare: 'a', late: 'l' } })).toBe('');
});

it('what has run before it in the page has not in a worker', () => {
  const both = { e: { bare: 'a', late: 'l' }, a: {}, l: { bare: 'a' }, w: { named: 'l' } };
  expect(textOfLate(both, 'e')).toBe('');
  expect(textOfLate(both, 'ew')).toBe('import"./a.js";');
});

it('what runs at once keeps its order', () => {
  expect(textOfLate({ e: { bare: 'al' }, a: {}, l: { bare: 'a' } })).toBe('import"./a.js";');
});
