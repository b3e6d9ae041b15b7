import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';

export interface BrowserKind {
  readonly label: string;
  /** The environment variable by which a person names an executable of their own. */
  readonly variable: string;
  readonly commands: readonly string[];
  /** Where installers put it outside the PATH. */
  readonly places: Readonly<Partial<Record<NodeJS.Platform, readonly string[]>>>;
  /** The name of Debian's package. */
  readonly debianPackage: string;
}

export const chromium: BrowserKind = {
  label: 'Chromium',
  variable: 'CHROME_PATH',
  commands: ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'],
  places: {
    darwin: ['/Applications/Google Chrome.app/Contents/MacOS/Google Chrome'],
    win32: ['C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe'],
  },
  debianPackage: 'chromium',
};

export const firefox: BrowserKind = {
  label: 'Firefox',
  variable: 'FIREFOX_PATH',
  commands: ['firefox-esr', 'firefox'],
  places: {
    darwin: ['/Applications/Firefox.app/Contents/MacOS/firefox'],
    win32: ['C:\\Program Files\\Mozilla Firefox\\firefox.exe'],
  },
  debianPackage: 'firefox-esr',
};

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

/** The first executable called one of `commands` in the PATH of `env`, or undefined. */
export function findCommand(commands: readonly string[], env: NodeJS.ProcessEnv): string | undefined {
  const folders = (env['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '');
  return commands.flatMap((command) => folders.map((folder) => join(folder, command))).find(isExecutable);
}

/**
 * The executable of a browser, or undefined. A path that the environment names wins; one that names nothing is an error,
 * since running another browser than the one asked for would mislead.
 */
export function findBrowser(kind: BrowserKind, env: NodeJS.ProcessEnv): string | undefined {
  const named = env[kind.variable];
  if (named !== undefined && named !== '') {
    if (isExecutable(named)) return named;
    throw new Error(`${kind.variable} is ${named}, where there is no program: correct it or unset it.`);
  }
  return findCommand(kind.commands, env) ?? kind.places[process.platform]?.find(isExecutable);
}
