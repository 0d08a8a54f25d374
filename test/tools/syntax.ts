/** Walking the syntax tree of a source file. */
import { parseSync } from 'vite';
import type { SourceFile } from './source-files.ts';

export interface SyntaxNode {
  type: string;
  [field: string]: unknown;
}

export function isNode(value: unknown): value is SyntaxNode {
  return typeof value === 'object' && value !== null && typeof (value as SyntaxNode).type === 'string';
}

/** Nodes under some fields of a node, in their order. */
export function nodesOf(value: unknown): SyntaxNode[] {
  return (Array.isArray(value) ? (value as unknown[]) : [value]).filter(isNode);
}

/** @throws Error naming the file when it cannot be parsed */
export function parse(file: SourceFile): SyntaxNode {
  const { program, errors } = parseSync(file.path, file.text, { astType: 'ts' });
  const firstError = errors[0];
  if (firstError) throw new Error(`${file.path} cannot be parsed: ${firstError.message}`);
  return program as unknown as SyntaxNode;
}

/** Calls back for this node and every one under it, with the node that holds it and the field that holds it. */
export function walk(
  node: SyntaxNode,
  visit: (node: SyntaxNode, parent: SyntaxNode | undefined, field: string) => void,
  parent?: SyntaxNode,
  field = '',
): void {
  visit(node, parent, field);
  for (const [name, value] of Object.entries(node)) for (const child of nodesOf(value)) walk(child, visit, node, name);
}

/** The text of a string literal, or of a template without values. */
export function literalText(value: unknown): string | undefined {
  if (!isNode(value)) return undefined;
  if (value.type === 'Literal' && typeof value['value'] === 'string') return value['value'];
  if (value.type === 'TemplateLiteral' && nodesOf(value['expressions']).length === 0) return templateText(value);
  return undefined;
}

/** A template with its values as {0}, {1} …, as `say` looks it up. */
export function templateText(template: SyntaxNode): string {
  const texts = nodesOf(template['quasis']).map((quasi) => (quasi['value'] as { cooked: string }).cooked);
  return texts.reduce((sentence, text, index) => `${sentence}{${index - 1}}${text}`);
}
