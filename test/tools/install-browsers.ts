import { spawnSync } from 'node:child_process';
import { type BrowserKind, findBrowser, findCommand } from './find-browser.ts';

export interface Machine {
  readonly env: NodeJS.ProcessEnv;
  readonly isRoot: boolean;
  /** Runs a command, its output shown, and gives its exit code. */
  readonly run: (command: string, args: readonly string[]) => number | null;
}

export const thisMachine: Machine = {
  env: process.env,
  isRoot: process.getuid?.() === 0,
  run: (command, args) =>
    spawnSync(command, args, { stdio: 'inherit', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } }).status,
};

const advice = (kind: BrowserKind): string =>
  `${kind.label} was not found and could not be installed here: install it, or set ${kind.variable} to its program, and run the tests again.`;

/**
 * Sees to it that each browser is there: where one is missing and this machine lets us, Debian's package is installed.
 * Gives one line of advice for each that is missing still.
 */
export function ensureBrowsers(kinds: readonly BrowserKind[], machine: Machine): ReadonlyMap<BrowserKind, string> {
  const isMissing = (kind: BrowserKind): boolean => findBrowser(kind, machine.env) === undefined;
  const missing = kinds.filter(isMissing);
  const aptGet = findCommand(['apt-get'], machine.env);
  if (missing.length > 0 && aptGet !== undefined && machine.isRoot) {
    machine.run(aptGet, ['update']);
    machine.run(aptGet, ['install', '--yes', '--no-install-recommends', ...missing.map((kind) => kind.debianPackage)]);
  }
  return new Map(missing.filter(isMissing).map((kind) => [kind, advice(kind)]));
}
