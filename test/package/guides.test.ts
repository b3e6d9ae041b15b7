import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { projectRoot } from '../tools/source-files.ts';

const read = (file: string) => readFileSync(`${projectRoot}/${file}`, 'utf8');
const scripts: Readonly<Record<string, string>> = JSON.parse(read('package.json')).scripts;

/** Commands stand on lines of their own, indented by four spaces, in the two guides. */
function commandsOf(file: string): string[] {
  const lines = read(file).split('\n');
  const commands = lines.filter((line) => /^ {4}(npm|npx|node) /.test(line)).map((line) => line.trim());
  return [...new Set(commands.flatMap((line) => line.split(' && ')))];
}

/** Why a command would fail, or nothing. */
function faultOf(command: string): string | undefined {
  const words = command.split(' ');
  if (words[0] === 'npm') {
    if (words[1] === 'ci') return undefined;
    const script = words[1] === 'run' ? words[2] : words[1];
    return script !== undefined && script in scripts ? undefined : `there is no script "${script}"`;
  }
  const tool = words[1] ?? '';
  if (words[0] === 'npx' && !existsSync(`${projectRoot}/node_modules/.bin/${tool}`))
    return `there is no tool "${tool}"`;
  const missing = words.filter((word) => /^\.?[\w-]+\//.test(word) && !existsSync(`${projectRoot}/${word}`));
  return missing.length === 0 ? undefined : `there is no ${missing.join(', ')}`;
}

describe.each(['README.md', 'DEVELOPERS.md'])('the commands of %s', (file) => {
  it('are there', () => {
    expect(commandsOf(file).length).toBeGreaterThan(1);
  });

  it.each(commandsOf(file))('%s can be run', (command) => {
    expect(faultOf(command)).toBeUndefined();
  });
});

it('a command that does not exist is found out', () => {
  expect(faultOf('npm run no-such-script')).toContain('no-such-script');
  expect(faultOf('npx no-such-tool test')).toContain('no-such-tool');
  expect(faultOf('npx vitest run test/no-such-folder')).toContain('test/no-such-folder');
});

it('README opens with its two commands, each one line', () => {
  expect(read('README.md')).toContain('    npm ci && npm start\n');
  expect(read('README.md')).toContain('    npm ci && npm test\n');
});

it('the map of DEVELOPERS.md names every folder of src', () => {
  const folders = ['src', 'src/engine'].flatMap((place) =>
    readdirSync(`${projectRoot}/${place}`, { withFileTypes: true }),
  );
  const names = folders.filter((entry) => entry.isDirectory()).map(({ name }) => name);
  const guide = read('DEVELOPERS.md');
  expect(names.filter((name) => !guide.includes(`${name}/`))).toEqual([]);
});
