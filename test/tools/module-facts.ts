import { nameOf, nodesIn, parseModule, type SyntaxNode, textOf } from './syntax.ts';

/** What a module's text says about its surroundings, read from its syntax: comments and strings do not count. */
export interface ModuleFacts {
  /** Every module it names: import, re-export, `import()` and types taken from a module. */
  readonly specifiers: readonly string[];
  /** Every name it mentions, with the member where one is taken from it: `season`, `Math.random`. Keys are no names. */
  readonly names: ReadonlySet<string>;
}

/** The nodes right below `node`, without the words that only label something: keys, members, the far name of an import. */
function childrenOf(node: SyntaxNode): readonly SyntaxNode[] {
  const labels = node['computed'] === true ? [] : ['key', 'property'];
  return Object.entries(node)
    .filter(([field]) => !labels.includes(field) && field !== 'imported')
    .flatMap(([, value]) => nodesIn(value));
}

/** `Math.random` for both ways to write it; nothing where the owner or the member is computed. */
function memberOf(node: SyntaxNode): string | undefined {
  if (node.type !== 'MemberExpression') return undefined;
  const owner = nameOf(node['object']);
  const member = node['computed'] === true ? textOf(node['property']) : nameOf(node['property']);
  return owner !== undefined && member !== undefined ? `${owner}.${member}` : undefined;
}

export function readModule(path: string, source: string): ModuleFacts {
  const specifiers: string[] = [];
  const names = new Set<string>();

  const visit = (node: SyntaxNode): void => {
    const specifier = textOf(node['source']);
    if (specifier !== undefined) specifiers.push(specifier);
    const name = nameOf(node);
    if (name !== undefined) names.add(name);
    const member = memberOf(node);
    if (member !== undefined) {
      names.add(member);
      return;
    }
    for (const child of childrenOf(node)) visit(child);
  };

  visit(parseModule(path, source));
  return { specifiers, names };
}
