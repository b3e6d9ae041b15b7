import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { editorFiles } from '../../.build/steps/editor-data.ts';
import { elementNames, elementsManifest, elementsOf } from '../../.build/steps/elements-manifest.ts';
import { withElementsSection } from '../../.build/steps/readme-elements.ts';
import { filesUnder, projectRoot } from '../tools/source-files.ts';

const read = (path: string): string => readFileSync(join(projectRoot, path), 'utf8');

const files = await editorFiles();
const elements = elementsOf(await elementsManifest());

/** How a view asks its plan, and which event that is. */
const WISHES: ReadonlyMap<RegExp, string> = new Map([
  [/\bplan\.edit\(/, 'RunnelEditEvent'],
  [/\bplan\.select\(/, 'RunnelSelectEvent'],
  [/\bplan\.step\(/, 'RunnelHistoryEvent'],
]);

/** The classes of the events that leave an element, read off the modules of its folder. */
function eventsSent(name: string): ReadonlySet<string> {
  const text = filesUnder(`src/elements/${name}`, '.ts').map(read).join('\n');
  const made = [...text.matchAll(/\bnew (Runnel\w+Event)\(/g)].map((match) => match[1] ?? '');
  const wished = [...WISHES].filter(([call]) => call.test(text)).map(([, event]) => event);
  return new Set([...made, ...wished]);
}

describe('what is read off the class comments', () => {
  it.each([...files.keys()])(
    '%s is as they say; if not, run node --import ./.build/run-ts.mjs .build/editor-data.ts',
    (path) => {
      expect(read(path)).toBe(files.get(path));
    },
  );

  it('has every element', () => {
    expect(elements.map(({ tagName }) => tagName)).toEqual(elementNames().map((name) => `runnel-${name}`));
  });

  it('says of each that it is a custom element, whatever class of the kit lies between it and Lit', () => {
    for (const { customElement, superclass } of elements) {
      expect({ customElement, superclass }).toEqual({
        customElement: true,
        superclass: { name: 'LitElement', package: 'lit' },
      });
    }
  });

  it('leaves no reference page of an element that is no more, and links every one from README.md', () => {
    const pages = elements.map(({ tagName }) => `web-types/elements/${tagName}.md`);
    expect(filesUnder('web-types/elements', '')).toEqual(pages);
    const readme = read('README.md');
    expect(pages.filter((path) => !readme.includes(`(${path})`))).toEqual([]);
  });

  it('does not touch package.json', () => {
    expect([...files.keys()]).not.toContain('package.json');
  });
});

describe.each(elements)('the comment of $tagName', (element) => {
  it('has a summary of one sentence and says how to use it', () => {
    expect(element.summary).toMatch(/^[A-Z].{20,}\.$/);
    expect(element.description.length).toBeGreaterThan(20);
  });

  it('describes everything that it lists', () => {
    const { attributes = [], members = [], events = [], slots = [], cssParts = [], cssProperties = [] } = element;
    const listed = [...attributes, ...members, ...events, ...slots, ...cssParts, ...cssProperties];
    expect(listed.filter(({ description = '' }) => !description.trim().endsWith('.')).map(({ name }) => name)).toEqual(
      [],
    );
  });

  it('documents each event that leaves it, by its class', () => {
    const documented = new Set((element.events ?? []).map(({ type }) => type?.text));
    // What the planner's parts ask is granted by the plan inside it; its comment tells of what that plan says.
    const sent = element.tagName === 'runnel-planner' ? [] : [...eventsSent(element.tagName.replace('runnel-', ''))];
    expect(sent.filter((event) => !documented.has(event))).toEqual([]);
  });
});

it('an event that is documented is one of the global map', () => {
  const map = filesUnder('src/elements/shared/events', '.ts').map(read).join('\n');
  const faulty = elements
    .flatMap(({ events = [] }) => events)
    .filter(({ name, type }) => !map.includes(`'${name}': ${type?.text};`));
  expect(elements.flatMap(({ events = [] }) => events).length).toBeGreaterThan(10);
  expect(faulty).toEqual([]);
});

it.each(elements)('the reference page of $tagName has all that its comment tells', (element) => {
  const page = files.get(`web-types/elements/${element.tagName}.md`) ?? '';
  const { attributes = [], members = [], events = [], slots = [], cssParts = [], cssProperties = [] } = element;
  const names = [...attributes, ...events, ...cssParts, ...cssProperties].map(({ name }) => `| \`${name}\` |`);
  const own = members.map(({ name, kind }) => (kind === 'method' ? `| \`${name}(` : `\`${name}\` |`));
  expect([...names, ...own].filter((text) => !page.includes(text))).toEqual([]);
  expect(page).toContain(element.summary);
  expect(page).toMatch(new RegExp(`\`\`\`html\n[^\`]*<${element.tagName}[ >]`));
  expect(page.includes('## Slots')).toBe(slots.length > 0);
});

it('the README is refused without its markers', () => {
  expect(() => withElementsSection('# Runnel', elements)).toThrow('between');
});
