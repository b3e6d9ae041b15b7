import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Something with a name and a sentence about it: a slot, a part, a custom property. */
interface Named {
  readonly name: string;
  readonly description?: string;
  readonly default?: string;
}

interface Typed extends Named {
  readonly type?: { readonly text: string };
}

interface Attribute extends Typed {
  /** The property that it sets. */
  readonly fieldName?: string;
}

export interface Member extends Typed {
  readonly kind: 'field' | 'method';
  readonly privacy?: 'private' | 'protected' | 'public';
  readonly readonly?: boolean;
  readonly static?: boolean;
  readonly attribute?: string;
  readonly parameters?: readonly Typed[];
  readonly return?: { readonly type?: { readonly text: string } };
}

/** An element as the manifest's schema 1.0.0 describes it; what this kit uses of that. */
export interface ElementDeclaration {
  readonly kind: string;
  readonly name: string;
  readonly tagName: string;
  readonly summary: string;
  readonly description: string;
  readonly attributes?: readonly Attribute[];
  readonly members?: readonly Member[];
  readonly events?: readonly Typed[];
  readonly slots?: readonly Named[];
  readonly cssParts?: readonly Named[];
  readonly cssProperties?: readonly Named[];
  readonly superclass?: { readonly name: string; readonly package: string };
  readonly customElement?: boolean;
}

/** The class of an event, with what it carries. */
export type EventDeclaration = Pick<ElementDeclaration, 'kind' | 'name' | 'members'>;

interface Module {
  readonly kind: 'javascript-module';
  readonly path: string;
  readonly declarations: readonly ElementDeclaration[];
  readonly exports: readonly { readonly kind: string; readonly name: string }[];
}

export interface ElementsManifest {
  readonly schemaVersion: string;
  readonly modules: readonly Module[];
}

interface Analyzer {
  readonly create: (of: { modules: readonly object[]; plugins: readonly object[] }) => ElementsManifest;
  readonly ts: {
    readonly createSourceFile: (name: string, text: string, target: number, setParents: boolean) => object;
    readonly ScriptTarget: { readonly ES2022: number };
  };
}

/** By a name in a variable: the analyzer's declarations ask for another TypeScript than this project's. */
const analyzerModule: string = '@custom-elements-manifest/analyzer/index.js';
const litModule: string = '@custom-elements-manifest/analyzer/src/features/framework-plugins/lit/lit.js';

const EVENTS = 'src/elements/shared/events';

/** Names of the elements, which are those of their folders. */
export function elementNames(): readonly string[] {
  return readdirSync(join(root, 'src/elements'))
    .filter((name) => name !== 'shared')
    .sort();
}

/** What the analyzer finds in modules of src. */
async function analyzed(paths: readonly string[]): Promise<readonly Module[]> {
  const { create, ts }: Analyzer = await import(analyzerModule);
  const { litPlugin }: { litPlugin: () => readonly object[] } = await import(litModule);
  const sources = paths.map((path) =>
    ts.createSourceFile(path, readFileSync(join(root, path), 'utf8'), ts.ScriptTarget.ES2022, true),
  );
  return create({ modules: sources, plugins: litPlugin() }).modules;
}

/** Reads the manifest off the class comments. Paths in it are those of the compiled modules. */
export async function elementsManifest(): Promise<ElementsManifest> {
  const modules = await analyzed(elementNames().map((name) => `src/elements/${name}/runnel-${name}.ts`));
  return { schemaVersion: '1.0.0', modules: modules.flatMap(elementModules) };
}

/** The classes of the events, by name. */
export async function eventDeclarations(): Promise<ReadonlyMap<string, EventDeclaration>> {
  const files = readdirSync(join(root, EVENTS)).filter((file) => file.endsWith('-event.ts'));
  const modules = await analyzed(files.map((file) => `${EVENTS}/${file}`));
  const classes = modules.flatMap(({ declarations }) => declarations).filter(({ kind }) => kind === 'class');
  return new Map(classes.map((each) => [each.name, each]));
}

/** The elements of a manifest, by tag. */
export function elementsOf({ modules }: ElementsManifest): readonly ElementDeclaration[] {
  return modules.flatMap(({ declarations }) => declarations);
}

/** The module of an element's class, and the one that defines it. */
function elementModules({ path, declarations, exports }: Module): readonly Module[] {
  const folder = path.replace(/^src\//, 'dist/').replace(/\/[^/]+$/, '');
  const module = path.replace(/^src\//, 'dist/').replace(/\.ts$/, '.js');
  const tag = path.match(/runnel-\w+(?=\.ts$)/)?.[0] ?? '';
  const own = declarations.filter(({ kind }) => kind === 'class').map((each) => tidied(each, tag));
  const name = own[0]?.name;
  return [
    {
      kind: 'javascript-module',
      path: module,
      declarations: own,
      // Types that the module gives out as well are no part of it when it runs.
      exports: exports.filter((each) => each.name === name).map((each) => ({ ...each, declaration: { name, module } })),
    },
    {
      kind: 'javascript-module',
      path: `${folder}/define.js`,
      declarations: [],
      exports: [{ kind: 'custom-element-definition', name: tag, declaration: { name, module } }],
    },
  ];
}

/** What is for users: without private members, and the comment's first paragraph as summary, the rest as description. */
function tidied(declaration: ElementDeclaration, tagName: string): ElementDeclaration {
  const [summary = '', ...rest] = declaration.summary.split('\n\n');
  const members = (declaration.members ?? []).filter(
    ({ name, privacy }) => !name.startsWith('#') && (privacy ?? 'public') === 'public',
  );
  return {
    ...declaration,
    // What lies between an element and Lit is the kit's own business, and unknown to the analyzer.
    superclass: { name: 'LitElement', package: 'lit' },
    customElement: true,
    tagName,
    summary: oneLine(summary),
    description: rest.map(oneLine).join('\n\n'),
    members,
    // The analyzer also guesses events from the code, and takes an argument for a name.
    events: (declaration.events ?? []).filter(({ description }) => description !== undefined),
  };
}

const oneLine = (text: string): string => text.replaceAll(/\s+/g, ' ').trim();
