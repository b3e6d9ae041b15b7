import { parseAst } from 'vite';

/** A node of a module's syntax tree (ESTree), with the fields that its type has. */
export type SyntaxNode = { readonly type: string } & Readonly<Record<string, unknown>>;

export const isNode = (value: unknown): value is SyntaxNode =>
  typeof value === 'object' && value !== null && typeof (value as { type?: unknown }).type === 'string';

/** The nodes that a field of a node holds: one, several or none. */
export function nodesIn(value: unknown): readonly SyntaxNode[] {
  if (Array.isArray(value)) return value.flatMap(nodesIn);
  return isNode(value) ? [value] : [];
}

export function parseModule(path: string, source: string): SyntaxNode {
  return parseAst(source, { lang: 'ts' }, path) as unknown as SyntaxNode;
}

/** The text of a string literal. */
export const textOf = (value: unknown): string | undefined =>
  isNode(value) && typeof value['value'] === 'string' ? value['value'] : undefined;

/** The name of an identifier. */
export const nameOf = (value: unknown): string | undefined =>
  isNode(value) && value.type === 'Identifier' && typeof value['name'] === 'string' ? value['name'] : undefined;
