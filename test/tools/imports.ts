/**
 * What a source file imports, and which global names it uses without declaring them, read from its syntax tree.
 */
import { parseSync } from 'vite';
import type { SourceFile } from './source-files.ts';

/** One import. */
export interface Import {
  name: string;
  /** Whether only types come from there, so that nothing of it is left when the program runs. */
  typeOnly: boolean;
}

/** What one file reaches for. */
export interface Reach {
  path: string;
  /** What is named after `from`, in `import('…')` and in `new URL('…', import.meta.url)`. */
  imports: Import[];
  /** Names that are used as identifiers and declared nowhere in the file. */
  globals: Set<string>;
}

interface SyntaxNode {
  type: string;
  [field: string]: unknown;
}

function isNode(value: unknown): value is SyntaxNode {
  return typeof value === 'object' && value !== null && typeof (value as SyntaxNode).type === 'string';
}

/** Calls back for every node under this one, with the node that holds it and the field that holds it. */
function walk(
  node: SyntaxNode,
  visit: (node: SyntaxNode, parent: SyntaxNode | undefined, field: string) => void,
  parent?: SyntaxNode,
  field = '',
): void {
  visit(node, parent, field);
  for (const [name, value] of Object.entries(node))
    for (const child of Array.isArray(value) ? (value as unknown[]) : [value])
      if (isNode(child)) walk(child, visit, node, name);
}

/** Whether an identifier here is a name for a member or a key, not a reference to a variable. */
function isMemberName(parent: SyntaxNode | undefined, field: string): boolean {
  if (!parent) return false;
  if (parent.type === 'MemberExpression') return field === 'property' && parent['computed'] !== true;
  if (parent.type === 'TSQualifiedName') return field === 'right';
  if (field === 'key') return parent['computed'] !== true;
  return /^(Import|Export).*Specifier$|^LabeledStatement$|^(Break|Continue)Statement$|^MetaProperty$/.test(parent.type);
}

/** Whether an identifier or pattern here introduces names. */
function isDeclaration(parent: SyntaxNode | undefined, field: string): boolean {
  if (!parent) return false;
  if (['id', 'params', 'parameters', 'param'].includes(field)) return true;
  if (parent.type === 'AssignmentPattern') return field === 'left';
  if (parent.type === 'TSTypeParameter') return field === 'name';
  if (/^Import.*Specifier$/.test(parent.type)) return field === 'local';
  return parent.type === 'ArrayPattern' || parent.type === 'RestElement' || parent.type === 'TSMappedType';
}

/** Every name bound in a pattern such as `{ a, b: { c } }`. */
function boundNames(pattern: SyntaxNode): string[] {
  const names: string[] = [];
  const visit = (value: unknown): void => {
    if (!isNode(value)) return;
    if (value.type === 'Identifier') names.push(value['name'] as string);
    else if (value.type === 'ObjectPattern') (value['properties'] as unknown[]).forEach(visit);
    else if (value.type === 'Property') visit(value['value']);
    else if (value.type === 'ArrayPattern') (value['elements'] as unknown[]).forEach(visit);
    else if (value.type === 'AssignmentPattern') visit(value['left']);
    else if (value.type === 'RestElement') visit(value['argument']);
  };
  visit(pattern);
  return names;
}

function literal(value: unknown): string | undefined {
  return isNode(value) && value.type === 'Literal' && typeof value['value'] === 'string' ? value['value'] : undefined;
}

/** Whether an import or export brings types only, said once for all names or for each of them. */
function isTypeOnly(node: SyntaxNode): boolean {
  if (node.type === 'TSImportType' || node['importKind'] === 'type' || node['exportKind'] === 'type') return true;
  const names = Array.isArray(node['specifiers']) ? (node['specifiers'] as SyntaxNode[]) : [];
  return names.length > 0 && names.every((name) => name['importKind'] === 'type' || name['exportKind'] === 'type');
}

/**
 * Reads what a file imports and which names it takes from its surroundings.
 *
 * @param file - TypeScript or JavaScript source
 * @throws Error naming the file when it cannot be parsed
 */
export function reachOf(file: SourceFile): Reach {
  const { program, errors } = parseSync(file.path, file.text, { astType: 'ts' });
  const firstError = errors[0];
  if (firstError) throw new Error(`${file.path} cannot be parsed: ${firstError.message}`);

  const imports: Import[] = [];
  const declared = new Set<string>();
  const used = new Set<string>();
  walk(program as unknown as SyntaxNode, (node, parent, field) => {
    if (/^(Import|ExportNamed|ExportAll)Declaration$|^(ImportExpression|TSImportType)$/.test(node.type)) {
      const source = literal(node['source']) ?? literal(node['argument']);
      if (source !== undefined) imports.push({ name: source, typeOnly: isTypeOnly(node) });
    }
    if (node.type === 'NewExpression' && isNode(node['callee']) && node['callee']['name'] === 'URL') {
      const address = literal((node['arguments'] as unknown[])[0]);
      if (address?.startsWith('.')) imports.push({ name: address, typeOnly: false });
    }
    if (node.type.endsWith('Pattern') && isDeclaration(parent, field))
      for (const name of boundNames(node)) declared.add(name);
    if (node.type === 'Identifier') {
      const name = node['name'] as string;
      if (isDeclaration(parent, field)) declared.add(name);
      else if (!isMemberName(parent, field)) used.add(name);
    }
  });
  return { path: file.path, imports, globals: new Set([...used].filter((name) => !declared.has(name))) };
}
