import { spawnSync } from 'node:child_process';
import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** A program that tests start: a browser, or one that reads what the kit writes. */
export interface ProgramKind {
  readonly label: string;
  /** The environment variable by which a person names an executable of their own. */
  readonly variable: string;
  readonly commands: readonly string[];
  /** Where installers put it outside the PATH. */
  readonly places: Readonly<Partial<Record<NodeJS.Platform, readonly string[]>>>;
  /** The name of Debian's package. */
  readonly debianPackage: string;
  /** Whether one that was found will do; left out: any will. */
  readonly isUsable?: (path: string) => boolean;
}

export const chromium: ProgramKind = {
  label: 'Chromium',
  variable: 'CHROME_PATH',
  commands: ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'],
  places: {
    darwin: ['/Applications/Google Chrome.app/Contents/MacOS/Google Chrome'],
    win32: ['C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe'],
  },
  debianPackage: 'chromium',
};

export const firefox: ProgramKind = {
  label: 'Firefox',
  variable: 'FIREFOX_PATH',
  commands: ['firefox-esr', 'firefox'],
  places: {
    darwin: ['/Applications/Firefox.app/Contents/MacOS/firefox'],
    win32: ['C:\\Program Files\\Mozilla Firefox\\firefox.exe'],
  },
  debianPackage: 'firefox-esr',
};

/** Recalculates workbooks. Of the whole suite only this and what it needs. */
export const libreOffice: ProgramKind = {
  label: 'LibreOffice Calc',
  variable: 'SOFFICE_PATH',
  commands: ['soffice', 'libreoffice'],
  places: { darwin: ['/Applications/LibreOffice.app/Contents/MacOS/soffice'] },
  debianPackage: 'libreoffice-calc',
};

/** Reads calendars; with the time zones of its own library. */
export const icalendar: ProgramKind = {
  label: 'Python with its package icalendar',
  variable: 'PYTHON_PATH',
  commands: ['python3'],
  places: { linux: ['/usr/bin/python3'] },
  debianPackage: 'python3-icalendar',
  isUsable: (path) => spawnSync(path, ['-c', 'import icalendar, zoneinfo'], { stdio: 'ignore' }).status === 0,
};

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

/** The executables called one of `commands` in the PATH of `env`, in order. */
function commandsFound(commands: readonly string[], env: NodeJS.ProcessEnv): readonly string[] {
  const folders = (env['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '');
  return commands.flatMap((command) => folders.map((folder) => join(folder, command))).filter(isExecutable);
}

/** The first of them, or undefined. */
export function findCommand(commands: readonly string[], env: NodeJS.ProcessEnv): string | undefined {
  return commandsFound(commands, env)[0];
}

/**
 * The executable of a program, or undefined. A path that the environment names wins; one that names nothing is an error,
 * since running another program than the one asked for would mislead.
 */
export function findProgram(kind: ProgramKind, env: NodeJS.ProcessEnv): string | undefined {
  const named = env[kind.variable];
  if (named !== undefined && named !== '') {
    if (isExecutable(named)) return named;
    throw new Error(`${kind.variable} is ${named}, where there is no program: correct it or unset it.`);
  }
  const inPlace = (kind.places[process.platform] ?? []).filter(isExecutable);
  return [...commandsFound(kind.commands, env), ...inPlace].find((path) => kind.isUsable?.(path) ?? true);
}

/** The same for a test that needs it. */
export function requireProgram(kind: ProgramKind): string {
  const path = findProgram(kind, process.env);
  if (path !== undefined) return path;
  throw new Error(
    `${kind.label} was not found: install it (Debian: ${kind.debianPackage}), or set ${kind.variable} to its program.`,
  );
}
