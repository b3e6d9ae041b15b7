/** What two checkers of packages say of the tarball. */
import { readFileSync } from 'node:fs';
import { checkPackage, createPackageFromTarballData, type Problem } from '@arethetypeswrong/core';
import { publint } from 'publint';
import { formatMessage } from 'publint/utils';
import { beforeAll, expect, it } from 'vitest';
import { elementNames } from '../../.build/steps/elements-manifest.ts';
import { exportPaths, readPackageManifest } from '../tools/package-exports.ts';
import { type PackedPackage, packedPackage } from '../tools/packed-package.ts';

let packed: PackedPackage;

beforeAll(async () => {
  packed = await packedPackage();
}, 300_000);

it('publint has nothing to say, not even as advice', async () => {
  const { buffer } = Uint8Array.from(readFileSync(packed.tarball));
  const { messages, pkg } = await publint({ strict: true, level: 'suggestion', pack: { tarball: buffer } });
  expect(pkg['name']).toBe(readPackageManifest().name);
  expect(messages.map((message) => formatMessage(message, pkg))).toEqual([]);
});

/** Ways to resolve a path that a package of ES modules alone does not serve: from CommonJS, and by a Node before exports. */
const NOT_SERVED = ['node10', 'node16-cjs'];

const isServed = (problem: Problem): boolean =>
  !('resolutionKind' in problem && NOT_SERVED.includes(problem.resolutionKind));

/** The element that stands for all in the paths that have a star: they are resolved alike, and to check one takes a second. */
const ELEMENT = 'planner';

it('the types of every path are as its module is, for whoever imports', async () => {
  const { name } = readPackageManifest();
  const others = elementNames().filter((element) => element !== ELEMENT);
  const paths = exportPaths(packed.files).filter(
    (path) =>
      (path.types !== undefined || path.module?.endsWith('.json')) &&
      !others.some((element) => path.module?.startsWith(`dist/elements/${element}/`)),
  );
  const entrypoints = paths.map((path) => path.name.replace(name, '.'));
  const result = await checkPackage(createPackageFromTarballData(readFileSync(packed.tarball)), { entrypoints });
  if (result.types === false) throw new Error('the package has no types');
  expect(Object.keys(result.entrypoints)).toEqual(entrypoints);
  expect(result.problems.filter(isServed)).toEqual([]);
  // Those who are not served are told so, which shows that the checker was at work.
  expect(result.problems.length).toBeGreaterThan(entrypoints.length);
}, 300_000);
