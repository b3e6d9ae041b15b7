import { spawnSync } from 'node:child_process';
import { findCommand, findProgram, type ProgramKind } from './find-program.ts';

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

/** Why a program cannot be used, in one line; undefined where it can. */
function faultOf(kind: ProgramKind, env: NodeJS.ProcessEnv): string | undefined {
  try {
    if (findProgram(kind, env) !== undefined) return undefined;
    return `${kind.label} was not found and could not be installed here: install it, or set ${kind.variable} to its program, and run the tests again.`;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

/**
 * Sees to it that each program is there: where one is missing and this machine lets us, Debian's package is installed.
 * Gives one line of advice for each that cannot be used still.
 */
export function ensurePrograms(kinds: readonly ProgramKind[], machine: Machine): ReadonlyMap<ProgramKind, string> {
  const { env, isRoot, run } = machine;
  const missing = kinds.filter((kind) => !env[kind.variable] && findProgram(kind, env) === undefined);
  const aptGet = findCommand(['apt-get'], env);
  if (missing.length > 0 && aptGet !== undefined && isRoot) {
    run(aptGet, ['update']);
    run(aptGet, ['install', '--yes', '--no-install-recommends', ...missing.map((kind) => kind.debianPackage)]);
  }
  const faults = kinds.map((kind) => [kind, faultOf(kind, env)] as const);
  return new Map(faults.filter((entry): entry is [ProgramKind, string] => entry[1] !== undefined));
}
