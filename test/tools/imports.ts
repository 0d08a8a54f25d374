/**
 * What a source file imports, and which global names it uses without declaring them, read from its syntax tree.
 */
import type { SourceFile } from './source-files.ts';
import { isNode, literalText, parse, walk, type SyntaxNode } from './syntax.ts';

/** One import. */
export interface Import {
  name: string;
  /** Whether only types come from there, so that nothing of it is left when the program runs. */
  typeOnly: boolean;
  /** Whether it comes when it is called for, not with the file. */
  later: boolean;
}

/** What one file reaches for. */
export interface Reach {
  path: string;
  /** What is named after `from`, in `import('…')` and in `new URL('…', import.meta.url)`. */
  imports: Import[];
  /** Names that are used as identifiers and declared nowhere in the file. */
  globals: Set<string>;
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
  const imports: Import[] = [];
  const declared = new Set<string>();
  const used = new Set<string>();
  walk(parse(file), (node, parent, field) => {
    if (/^(Import|ExportNamed|ExportAll)Declaration$|^(ImportExpression|TSImportType)$/.test(node.type)) {
      const source = literalText(node['source']) ?? literalText(node['argument']);
      if (source !== undefined)
        imports.push({ name: source, typeOnly: isTypeOnly(node), later: node.type === 'ImportExpression' });
    }
    if (node.type === 'NewExpression' && isNode(node['callee']) && node['callee']['name'] === 'URL') {
      const address = literalText((node['arguments'] as unknown[])[0]);
      if (address?.startsWith('.')) imports.push({ name: address, typeOnly: false, later: true });
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
