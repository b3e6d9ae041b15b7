/** README's example of another language, as it stands there. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, it } from 'vitest';
import { weekWords } from '../../src/language/en/week.ts';
import { en } from '../../src/language/en.ts';
import { formatFor } from '../../src/language/format/format.ts';
import { loadLanguage } from '../../src/language/languages.ts';
import { readerFor } from '../../src/language/reader.ts';
import { projectRoot } from '../tools/source-files.ts';

it('registers a language that says what it says, and the rest in English', async () => {
  const readme = readFileSync(join(projectRoot, 'README.md'), 'utf8');
  const examples = [...readme.matchAll(/^```ts\n(.*?)^```/gms)].map(([, text = '']) => text);
  const example = examples.find((text) => text.includes('registerLanguage')) ?? '';
  expect(example).toContain("from 'runnel-kit/language'");
  const folder = mkdtempSync(join(tmpdir(), 'runnel-readme-'));
  try {
    const file = join(folder, 'spanish.ts');
    const language = pathToFileURL(join(projectRoot, 'src/language/index.ts')).pathname;
    writeFileSync(file, example.replace('runnel-kit/language', language));
    await import(/* @vite-ignore */ file);
  } finally {
    rmSync(folder, { recursive: true });
  }
  await loadLanguage('es-MX');
  const reader = readerFor('es-MX', 'us');
  const say = weekWords(reader.language);
  expect(say.close).toBe('Cerrar la semana');
  // Monday, April 5, 2027.
  expect(say.closeFrom(formatFor(reader), 20_913)).toBe('desde el lunes');
  expect(say.previous).toBe(en.week.previous);
});
