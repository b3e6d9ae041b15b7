/**
 * Finds prose in a module by its syntax tree: two words or more in a literal, or any word in the text of a template or in what
 * is read out. Comments, types, and what nobody reads do not count: classes, selectors, styles, errors thrown and written to the
 * console for programmers, and names of sources.
 */
import { htmlPositions } from './html-positions.ts';
import { isNode, nameOf, nodesIn, parseModule, type SyntaxNode, textOf } from './syntax.ts';

export interface Prose {
  readonly path: string;
  readonly line: number;
  readonly text: string;
}

/** `open`: a person may read it, two words are prose. `shown`: a person does, one word is. `hidden`: nobody does. */
type Use = 'open' | 'shown' | 'hidden';

/** Stands for a value in a template. */
const VALUE = '\uFFFC';

/** Two words, or a word of more than one letter beside a value. */
const TWO_WORDS = /\p{L}[^\s\uFFFC]*\s+[^\s\p{L}\uFFFC]*\p{L}|\p{L}{2}\S*\s+\uFFFC|\uFFFC\s+\p{L}{2}/u;
const WORD = /\p{L}/u;

/** Attributes and properties whose text a person reads or hears. */
const READ_OUT = new Set([
  ...['title', 'placeholder', 'alt', 'textcontent', 'innertext', 'nodevalue'],
  ...['label', 'description', 'valuetext', 'roledescription', 'placeholder'].flatMap((name) => [
    `aria-${name}`,
    `aria${name}`,
  ]),
]);

/** Keys of what nobody reads, or of what only says where something comes from. */
const NOT_READ = new Set(['source', 'sources', 'class', 'className', 'part', 'style', 'cssText']);

/** Functions that take a selector, a media query, or the name of a value that is out of range, for a programmer. */
const FOR_MACHINES = new Set([
  ...['querySelector', 'querySelectorAll', 'closest', 'matches', 'matchMedia'],
  ...['requireNumber', 'checkedShare', 'warnDeveloper', 'Symbol'],
]);

/** Lists of classes and of parts. */
const TOKEN_LISTS = new Set(['classList', 'part']);

/** Nodes of types that hold a value. */
const VALUES_IN_TYPES = new Set(['TSAsExpression', 'TSSatisfiesExpression', 'TSNonNullExpression', 'TSTypeAssertion']);

const FUNCTIONS = new Set(['ArrowFunctionExpression', 'FunctionExpression', 'FunctionDeclaration']);

/** The fields of an expression that its own value is taken from. */
const PASSED_ON: Readonly<Record<string, readonly string[]>> = {
  ConditionalExpression: ['consequent', 'alternate'],
  LogicalExpression: ['right'],
  ParenthesizedExpression: ['expression'],
  TSAsExpression: ['expression'],
  TSSatisfiesExpression: ['expression'],
};

/** A key by language, in a table of data. */
const LANGUAGE_TAG = /^[a-z]{2}(?:-[A-Z]{2})?$/;

export function proseIn(path: string, source: string): readonly Prose[] {
  if (path.endsWith('.styles.ts') || path.startsWith('src/look/')) return [];
  const module = parseModule(path, source);
  const finder = new ProseFinder(path, source, module);
  finder.visit(module, 'open');
  return finder.found;
}

class ProseFinder {
  readonly found: Prose[] = [];
  readonly #path: string;
  readonly #source: string;
  /** Whether the class that is visited is one of errors, whose message is for programmers. */
  #isInError = false;
  /** Names that a `source` field takes its text from. */
  readonly #sources: ReadonlySet<string>;

  constructor(path: string, source: string, module: SyntaxNode) {
    this.#path = path;
    this.#source = source;
    this.#sources = new Set(sourceNames(module));
  }

  visit(node: SyntaxNode, use: Use): void {
    const { type } = node;
    if (type.startsWith('TS') && !VALUES_IN_TYPES.has(type)) return;
    if (/^Import|^Export(?:All|Specifier)/.test(type)) return;
    const isForMachines = type === 'ThrowStatement' || this.#sources.has(nameOf(node['id']) ?? '');
    if (isForMachines) this.#children(node, 'hidden');
    else this.#visitValue(node, FUNCTIONS.has(type) ? 'open' : use);
  }

  #visitValue(node: SyntaxNode, use: Use): void {
    const { type } = node;
    if (type === 'Literal' || type === 'TemplateLiteral') this.#literal(node, use);
    else if (type === 'TaggedTemplateExpression') this.#tagged(node, use);
    else if (type === 'Property' || type === 'PropertyDefinition') this.#property(node, use);
    else if (type === 'AssignmentExpression') this.#assignment(node, use);
    else if (type === 'CallExpression') this.#call(node, use);
    else if (type.startsWith('Class')) this.#class(node, use);
    else this.#children(node, use);
  }

  #note(node: SyntaxNode, text: string, pattern: RegExp): void {
    if (!pattern.test(text)) return;
    const line = this.#source.slice(0, Number(node['start'])).split('\n').length;
    const shown = text.replaceAll(VALUE, '…').replaceAll(/\s+/g, ' ').trim();
    this.found.push({ path: this.#path, line, text: shown });
  }

  #children(node: SyntaxNode, use: Use): void {
    const passedOn = PASSED_ON[node.type] ?? [];
    for (const [field, value] of Object.entries(node)) {
      const each = use === 'shown' && !passedOn.includes(field) ? 'open' : use;
      for (const child of nodesIn(value)) this.visit(child, each);
    }
  }

  #class(node: SyntaxNode, use: Use): void {
    const before = this.#isInError;
    if (nodesIn(node['superClass']).some((each) => /Error$/.test(nameOf(each) ?? ''))) this.#isInError = true;
    this.#children(node, use);
    this.#isInError = before;
  }

  #literal(node: SyntaxNode, use: Use): void {
    const text = node.type === 'Literal' ? textOf(node) : quasisOf(node).join(VALUE);
    if (text !== undefined && use !== 'hidden') this.#note(node, text, use === 'shown' ? WORD : TWO_WORDS);
    for (const each of nodesIn(node['expressions'])) this.visit(each, use);
  }

  #tagged(node: SyntaxNode, use: Use): void {
    const tag = nameOf(node['tag']);
    for (const quasi of nodesIn(node['quasi'])) {
      if (tag === 'html' || tag === 'svg') this.#markup(quasi);
      else this.#literal(quasi, tag === 'css' ? 'hidden' : use);
    }
  }

  #markup(quasi: SyntaxNode): void {
    const { pieces, holes } = htmlPositions(quasisOf(quasi));
    for (const { text, attribute } of pieces) {
      if (useInMarkup(attribute) === 'shown') this.#note(quasi, text.replaceAll(/&#?\w+;/g, ' '), WORD);
    }
    for (const [index, value] of nodesIn(quasi['expressions']).entries()) {
      this.visit(value, useInMarkup(holes[index]?.attribute));
    }
  }

  #property(node: SyntaxNode, use: Use): void {
    const key = nodesIn(node['key'])[0];
    const isComputed = node['computed'] === true;
    if (key !== undefined) this.visit(key, use === 'hidden' ? use : 'open');
    const name = isComputed ? undefined : (nameOf(key) ?? textOf(key));
    for (const value of nodesIn(node['value'])) this.visit(value, this.#useUnder(name, use));
  }

  #assignment(node: SyntaxNode, use: Use): void {
    const [left] = nodesIn(node['left']);
    const name = left?.type === 'MemberExpression' ? nameOf(left['property']) : undefined;
    for (const value of nodesIn(node['right'])) this.visit(value, this.#useUnder(name, use));
  }

  /** How a value is used that stands under a name. */
  #useUnder(name: string | undefined, use: Use): Use {
    if (name === undefined || use === 'hidden') return use;
    if (NOT_READ.has(name)) return 'hidden';
    if (this.#path.endsWith('.data.ts') && LANGUAGE_TAG.test(name)) return 'hidden';
    return READ_OUT.has(name.toLowerCase()) ? 'shown' : 'open';
  }

  #call(node: SyntaxNode, use: Use): void {
    const [callee] = nodesIn(node['callee']);
    const [first, ...others] = nodesIn(node['arguments']);
    if (callee !== undefined) this.visit(callee, 'open');
    const isError = callee?.type === 'Super' && this.#isInError;
    const each = use === 'hidden' || isForMachines(callee) || isError ? 'hidden' : 'open';
    const isAttribute = callee !== undefined && nameOf(callee['property']) === 'setAttribute';
    const isReadOut = isAttribute && READ_OUT.has((textOf(first) ?? '').toLowerCase());
    if (first !== undefined) this.visit(first, each);
    for (const other of others) this.visit(other, isReadOut ? 'shown' : each);
  }
}

/** The names of constants that stand under a key `source`, or begin what stands there: `source: FAO`, `source: SOURCES.roots`. */
function sourceNames(node: SyntaxNode): readonly string[] {
  const key = node.type === 'Property' ? nameOf(node['key']) : undefined;
  const own = key === 'source' ? nodesIn(node['value']).flatMap(namesIn) : [];
  return [...own, ...Object.values(node).flatMap(nodesIn).flatMap(sourceNames)];
}

function namesIn(node: SyntaxNode): readonly string[] {
  const name = nameOf(node);
  return name === undefined ? Object.values(node).flatMap(nodesIn).flatMap(namesIn) : [name];
}

/** Whether what a call is given is a selector, a class or a line of the console. */
function isForMachines(callee: SyntaxNode | undefined): boolean {
  if (FOR_MACHINES.has(nameOf(callee) ?? '')) return true;
  if (callee?.type !== 'MemberExpression') return false;
  const owner = callee['object'];
  const ownerName = nameOf(owner) ?? (isNode(owner) ? nameOf(owner['property']) : undefined) ?? '';
  return ownerName === 'console' || TOKEN_LISTS.has(ownerName) || FOR_MACHINES.has(nameOf(callee['property']) ?? '');
}

/** `attribute`: undefined for the text of an element, empty between attributes. */
function useInMarkup(attribute: string | undefined): Use {
  if (attribute === undefined) return 'shown';
  const name = attribute.replace(/^[.?@]/, '');
  if (READ_OUT.has(name.toLowerCase())) return 'shown';
  return NOT_READ.has(name) ? 'hidden' : 'open';
}

function quasisOf(node: SyntaxNode): readonly string[] {
  return nodesIn(node['quasis']).map(({ value }) => {
    const { cooked, raw } = value as { readonly cooked?: string | null; readonly raw: string };
    return cooked ?? raw;
  });
}
