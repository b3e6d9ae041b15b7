import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { elementPage } from './element-pages.ts';
import { type ElementDeclaration, elementsManifest, elementsOf, eventDeclarations } from './elements-manifest.ts';
import { jsxTypes } from './jsx-types.ts';
import { plantsPage } from './plants-page.ts';
import { withElementsSection } from './readme-elements.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Where the elements' reference pages lie. */
const PAGES = 'web-types/elements';

/** The files that are read off the class comments, by path from the root, as they should be. */
export async function editorFiles(): Promise<ReadonlyMap<string, string>> {
  const manifest = await elementsManifest();
  const elements = elementsOf(manifest);
  const events = await eventDeclarations();
  return new Map([
    ['web-types/custom-elements.json', asJson(manifest)],
    ['web-types/web-types.json', asJson(webTypes(elements))],
    ['web-types/vscode.html-custom-data.json', asJson(vscodeData(elements))],
    ['web-types/jsx.d.ts', jsxTypes(elements)],
    ...elements.map((each) => [`${PAGES}/${each.tagName}.md`, elementPage(each, events)] as const),
    ['web-types/plants.md', plantsPage()],
    ['README.md', withElementsSection(readFileSync(join(root, 'README.md'), 'utf8'), elements)],
  ]);
}

/** Writes them. */
export async function writeEditorFiles(): Promise<void> {
  const files = await editorFiles();
  // An element that is no more leaves no page behind.
  rmSync(join(root, PAGES), { recursive: true, force: true });
  mkdirSync(join(root, PAGES), { recursive: true });
  for (const [path, text] of files) writeFileSync(join(root, path), text);
}

const asJson = (value: object): string => `${JSON.stringify(value, undefined, 2)}\n`;

const about = ({ summary, description }: ElementDeclaration): string =>
  [summary, description].filter(Boolean).join('\n\n');

/** Editor data in the open format web-types. */
function webTypes(elements: readonly ElementDeclaration[]): object {
  const { name, version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as Record<string, string>;
  return {
    name,
    version,
    'description-markup': 'markdown',
    contributions: { html: { elements: elements.map(webTypesElement) } },
  };
}

function webTypesElement(element: ElementDeclaration): object {
  const { attributes = [], members = [], events = [], slots = [], cssParts = [], cssProperties = [] } = element;
  return {
    name: element.tagName,
    description: about(element),
    attributes: attributes.map(({ name, description, type, default: preset }) => ({
      name,
      description,
      ...(preset === undefined ? {} : { default: preset }),
      value: { type: type?.text ?? 'string' },
    })),
    slots: slots.map(({ name, description }) => ({ name, description })),
    js: {
      properties: members
        .filter(({ kind }) => kind === 'field')
        .map(({ name, description, type, readonly }) => ({
          name,
          description,
          ...(type === undefined ? {} : { type: type.text }),
          ...(readonly === true ? { 'read-only': true } : {}),
        })),
      events: events.map(({ name, description, type }) => ({ name, description, type: type?.text })),
    },
    css: {
      parts: cssParts.map(({ name, description }) => ({ name, description })),
      properties: cssProperties.map(({ name, description, default: preset }) => ({
        name,
        description,
        ...(preset === undefined ? {} : { default: preset }),
      })),
    },
  };
}

/** Editor data in the custom data format of Visual Studio Code. */
function vscodeData(elements: readonly ElementDeclaration[]): object {
  return {
    version: 1.1,
    tags: elements.map((element) => ({
      name: element.tagName,
      description: { kind: 'markdown', value: about(element) },
      attributes: (element.attributes ?? []).map(({ name, description, type }) => ({
        name,
        description,
        ...(type?.text === 'boolean' ? { valueSet: 'v' } : {}),
      })),
    })),
  };
}
