import { readFileSync } from 'node:fs';
import type { Plugin } from 'esbuild';
import { withCompactStyles } from './compact-styles.ts';

/** Takes line breaks and indents out of the templates and styles that a page loads: to the bundler they are text. */
export const compactTemplates: Plugin = {
  name: 'compact-templates',
  setup({ onLoad }) {
    onLoad({ filter: /\/src\/.*\.ts$/ }, ({ path }) => ({ contents: compactFile(path), loader: 'ts' }));
  },
};

/** A module as it is read from its file, with its templates and styles compact. */
export function compactFile(path: string): string {
  const module = readFileSync(path, 'utf8');
  return path.endsWith('.styles.ts') ? compactStylesModule(module) : compactModule(module);
}

const TEMPLATE = /\b(html|svg|css)`/g;

type Compact = (letters: string) => string;

/** What becomes of a template's own letters, by its tag. */
const COMPACT: Readonly<Record<string, Compact>> = { html: onOneLine, svg: onOneLine, css: withCompactStyles };

/** A space for each line break with its indents, and no quotes around a value that is a word: it says the same in HTML. */
function onOneLine(html: string): string {
  return html.replaceAll(/\s*\n\s*/g, ' ').replaceAll(/( [\w-]+=)"([\w-]+)"(?=[ >])/g, '$1$2');
}

/** A module whose templates are compact. */
export function compactModule(module: string): string {
  let text = '';
  let at = 0;
  for (const { index, 0: start, 1: tag = '' } of module.matchAll(TEMPLATE)) {
    // One within another has been read with it.
    if (index < at) continue;
    const template = readTemplate(module, index + start.length, COMPACT[tag]);
    text += module.slice(at, index) + start + template.text;
    at = template.end;
  }
  return text + module.slice(at);
}

/** A module of styles: what stands in templates of more than a line is styles, whether a tag says so or not. */
export function compactStylesModule(module: string): string {
  const lines: Compact = (letters) => (letters.includes('\n') ? withCompactStyles(letters) : letters);
  return readCode(`${module}}`, 0, lines).text.slice(0, -1);
}

interface Part {
  readonly text: string;
  /** Where what follows begins. */
  readonly end: number;
}

/** From behind the first backtick of a template to behind its last. */
function readTemplate(module: string, begin: number, compact: Compact | undefined, untagged?: Compact): Part {
  let text = '';
  let from = begin;
  const through = (end: number) => {
    const letters = module.slice(from, end);
    text += compact?.(letters) ?? letters;
    from = end;
  };
  for (let at = begin; at < module.length; at += 1) {
    if (module[at] === '\\') at += 1;
    else if (module[at] === '`') {
      through(at + 1);
      return { text, end: at + 1 };
    } else if (module.startsWith('${', at)) {
      through(at + 2);
      const code = readCode(module, at + 2, untagged);
      text += code.text;
      from = code.end;
      at = code.end - 1;
    }
  }
  throw new Error('A template has no end.');
}

/** From behind `${` to behind its brace. `untagged`: what becomes of templates there that have no tag. */
function readCode(module: string, begin: number, untagged?: Compact): Part {
  let text = '';
  let depth = 1;
  let at = begin;
  while (depth > 0) {
    const rest = module.slice(at);
    const [plain = ''] =
      /^(?:'(?:[^'\\]|\\.)*'|"(?:[^"\\]|\\.)*"|\/\/[^\n]*|\/\*[\s\S]*?\*\/|[^'"/`{}]+|\/)/.exec(rest) ?? [];
    text += plain;
    at += plain.length;
    if (plain !== '') continue;
    const sign = module[at];
    if (sign === undefined) throw new Error('A template has no end.');
    text += sign;
    at += 1;
    if (sign === '{') depth += 1;
    if (sign === '}') depth -= 1;
    if (sign === '`') {
      const [, tag = ''] = /\b(html|svg|css)`$/.exec(text) ?? [];
      const template = readTemplate(module, at, COMPACT[tag] ?? untagged, untagged);
      text += template.text;
      at = template.end;
    }
  }
  return { text, end: at };
}
