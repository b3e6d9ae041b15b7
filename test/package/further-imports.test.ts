import type { Metafile } from 'esbuild';
import { expect, it } from 'vitest';
import { furtherImports } from '../../.build/steps/further-imports.ts';

interface File {
  /** What it imports by name, a letter each. */
  readonly needs?: string;
  /** What it may load late. */
  readonly late?: string;
  readonly bytes?: number;
}

/** Files named by a letter, each of the one module of that name; `e` is the entry, `k` a worker's, and what is loaded late begins with its module. Great letters need a page. */
function imports(files: Readonly<Record<string, File>>, acting = ''): Readonly<Record<string, readonly string[]>> {
  const late = Object.values(files).flatMap(({ late = '' }) => [...late]);
  const to = (names = '', kind: 'import-statement' | 'dynamic-import') =>
    [...names].map((name) => ({ path: `out/${name}.js`, kind }));
  const outputs = Object.entries(files).map(([name, file]): [string, Metafile['outputs'][string]] => [
    `out/${name}.js`,
    {
      bytes: file.bytes ?? 100,
      inputs: { [name]: { bytesInOutput: 1 } },
      imports: [...to(file.needs, 'import-statement'), ...to(file.late, 'dynamic-import')],
      exports: [],
      ...('ek'.includes(name) || late.includes(name) ? { entryPoint: name } : {}),
    },
  ]);
  return Object.fromEntries(
    furtherImports(
      Object.fromEntries(outputs),
      { entry: 'out/e.js', worker: 'out/k.js' },
      {
        actsByItself: (module) => acting.includes(module),
        needsPage: (module) => module === module.toUpperCase(),
      },
    ),
  );
}

/** The parts p and q use x, and r as well uses y. */
const XY = { e: { late: 'pqr' }, p: { needs: 'xy' }, q: { needs: 'xy' }, r: { needs: 'y' }, x: {}, y: {} };

it('a part that loads one of two small files imports the other too', () => {
  expect(imports(XY)).toEqual({ r: ['x'] });
  expect(imports({ ...XY, p: { needs: 'x' } })).toEqual({ p: ['y'], r: ['x'] });
});

it('a worker is a part that has nothing of the page, and is given nothing that needs one', () => {
  const files = {
    e: { late: 'pq', needs: 'a' },
    a: { bytes: 9000 },
    p: { needs: 'xy' },
    q: { needs: 'x' },
    x: {},
    y: {},
  };
  expect(imports({ ...files, k: { needs: 'x' } })).toEqual({ k: ['y'], q: ['y'] });
  expect(imports({ ...files, k: { needs: 'x' }, y: { needs: 'a' } })).toEqual({});
  const ofPage = { ...files, p: { needs: 'xY' }, Y: {} };
  expect(imports({ ...ofPage, k: { needs: 'x' } })).toEqual({});
  expect(imports({ ...ofPage, k: { needs: 'xY' } })).toEqual({ q: ['Y'] });
});

it('that file comes with what it needs, which counts', () => {
  expect(imports({ ...XY, x: { needs: 'z' }, z: { bytes: 3000 } })).toEqual({ r: ['x', 'z'] });
  expect(imports({ ...XY, x: { needs: 'z' }, z: { bytes: 5000 } })).toEqual({});
});

it('a part loads 4 KiB at most that it has no use for, and 1.5 if it is heavy', () => {
  expect(imports({ ...XY, x: { bytes: 4096 } })).toEqual({ r: ['x'] });
  expect(imports({ ...XY, x: { bytes: 4097 } })).toEqual({});
  expect(imports({ ...XY, x: { bytes: 1536 }, r: { needs: 'y', bytes: 80_000 } })).toEqual({ r: ['x'] });
  expect(imports({ ...XY, x: { bytes: 1537 }, r: { needs: 'y', bytes: 80_000 } })).toEqual({});
});

it('what it has been given before counts, and the fewest bytes are given first', () => {
  // Once w and x are one, r can have both or none.
  const one = { ...XY, p: { needs: 'wxy' }, q: { needs: 'wxy' } };
  expect(imports({ ...one, w: { bytes: 2000 }, x: { bytes: 2000 } })).toEqual({ r: ['w', 'x'] });
  expect(imports({ ...one, w: { bytes: 2500 }, x: { bytes: 2500 } })).toEqual({});
  // It could have either, and not both, of x and w.
  const two = { e: { late: 'pqr' }, p: { needs: 'xy' }, q: { needs: 'wy' }, r: { needs: 'y' }, y: { bytes: 9000 } };
  expect(imports({ ...two, w: { bytes: 3000 }, x: { bytes: 2000 } })).toEqual({ q: ['x'], r: ['x'] });
  expect(imports({ ...two, w: { bytes: 2000 }, x: { bytes: 3000 } })).toEqual({ p: ['w'], r: ['w'] });
});

it('no part may come to load late what it has no use for', () => {
  expect(imports({ ...XY, x: { late: 'l' }, l: {} })).toEqual({});
  expect(imports({ ...XY, x: { needs: 'z' }, z: { late: 'l' }, l: {} })).toEqual({});
});

it('what does something when it runs is imported by nobody else', () => {
  expect(imports(XY, 'x')).toEqual({});
  expect(imports(XY, 'y')).toEqual({});
});

it('no part imports what imports that part', () => {
  expect(imports({ ...XY, x: { needs: 'r' } })).toEqual({});
});

it('the entry comes to load nothing more, and what it loads is joined with nothing late', () => {
  expect(imports({ ...XY, e: { needs: 'y', late: 'pqr' } })).toEqual({});
  const atOnce = { ...XY, e: { needs: 'xy', late: 'pqr' } };
  expect(imports(atOnce)).toEqual({ r: ['x'] });
  // They are there already, however many bytes they are.
  expect(imports({ ...atOnce, x: { bytes: 50_000 } })).toEqual({ r: ['x'] });
});
