import { spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { findProgram, chromium as realChromium, firefox as realFirefox } from './find-program.ts';
import { ensurePrograms, type Machine } from './install-programs.ts';

// Whatever is installed on this machine outside the PATH stays out of it.
const chromium = { ...realChromium, places: {} };
const firefox = { ...realFirefox, places: {} };

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'runnel-browsers-'));
  mkdirSync(join(folder, 'bin'));
});

afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

function placeProgram(name: string, script = '#!/bin/sh\n'): string {
  const path = join(folder, 'bin', name);
  writeFileSync(path, script);
  chmodSync(path, 0o755);
  return path;
}

/** A package tool that notes what it is asked for and, where it is asked to install, puts programs of those names in place. */
function placeAptGet(names: readonly string[]): void {
  const installed = names.map((name) => `cp "$0" ${folder}/bin/${name}`).join('\n');
  placeProgram('apt-get', `#!/bin/sh\necho "$@" >> ${folder}/asked\ncase $1 in install)\n${installed}\n: ;; esac\n`);
}

const asked = (): readonly string[] => readFileSync(join(folder, 'asked'), 'utf8').trim().split('\n');

const machine = (isRoot: boolean): Machine => ({
  env: { PATH: join(folder, 'bin') },
  isRoot,
  run: (command, args) => spawnSync(command, args, { stdio: 'ignore' }).status,
});

describe('a browser', () => {
  it('is found in the PATH', () => {
    const path = placeProgram('chromium');
    expect(findProgram(chromium, { PATH: join(folder, 'bin') })).toBe(path);
  });

  it('is the one that the environment names, where it names one', () => {
    placeProgram('chromium');
    const own = placeProgram('own-chromium');
    expect(findProgram(chromium, { PATH: join(folder, 'bin'), CHROME_PATH: own })).toBe(own);
  });

  it('is passed over where it will not do, for the next that will', () => {
    const other = placeProgram('google-chrome');
    placeProgram('chromium');
    const kind = { ...chromium, isUsable: (path: string) => !path.endsWith('chromium') };
    expect(findProgram(kind, { PATH: join(folder, 'bin') })).toBe(other);
    expect(findProgram({ ...kind, isUsable: () => false }, { PATH: join(folder, 'bin') })).toBeUndefined();
  });

  it('is never another than the one that the environment names', () => {
    placeProgram('chromium');
    const env = { PATH: join(folder, 'bin'), CHROME_PATH: join(folder, 'nothing') };
    expect(() => findProgram(chromium, env)).toThrow(/CHROME_PATH is .*nothing, where there is no program/);
  });
});

describe('a missing browser', () => {
  it('leads to nothing where none is missing', () => {
    placeProgram('chromium');
    placeProgram('firefox-esr');
    placeAptGet([]);
    expect([...ensurePrograms([chromium, firefox], machine(true))]).toEqual([]);
    expect(asked).toThrow();
  });

  it("is installed as Debian's package where this can be done", () => {
    placeProgram('firefox');
    placeAptGet(['chromium']);
    // Copying needs a program from outside the empty PATH of this machine.
    placeProgram('cp', '#!/bin/sh\nexec /bin/cp "$@"\n');
    expect([...ensurePrograms([chromium, firefox], machine(true))]).toEqual([]);
    expect(asked()).toEqual(['update', 'install --yes --no-install-recommends chromium']);
  });

  it('is named with one line of advice where the installation does not bring it', () => {
    placeProgram('firefox');
    placeAptGet([]);
    const advice = [...ensurePrograms([chromium, firefox], machine(true)).values()];
    expect(advice).toHaveLength(1);
    expect(advice[0]).toMatch(/^Chromium was not found .* set CHROME_PATH .*$/);
  });

  it('is not installed by somebody who is not root', () => {
    placeAptGet(['chromium', 'firefox']);
    expect(ensurePrograms([chromium, firefox], machine(false)).size).toBe(2);
    expect(asked).toThrow();
  });

  it('is not installed in place of one that the environment names wrongly', () => {
    placeAptGet(['chromium']);
    const { env, ...rest } = machine(true);
    const faults = ensurePrograms([chromium], { ...rest, env: { ...env, CHROME_PATH: join(folder, 'nothing') } });
    expect(faults.get(chromium)).toMatch(/^CHROME_PATH is /);
    expect(asked).toThrow();
  });

  it('is named with one line of advice where there is no apt-get', () => {
    expect([...ensurePrograms([firefox], machine(true)).values()].join()).toMatch(
      /^Firefox was not found .* FIREFOX_PATH/,
    );
  });
});
