/**
 * What the source says to people, read from its syntax: the ids of its tables, and what the functions in tables take.
 */
import { isNode, literalText, nodesOf, parse, walk, type SyntaxNode } from './syntax.ts';
import type { SourceFile } from './source-files.ts';

/** What a parameter takes: any text, any number, yes or no, one of some words, a list, or something else. */
export type Takes = 'text' | 'number' | 'flag' | 'list' | 'other' | readonly string[];

export interface Spoken {
  /** Ids of tables, each with its file. */
  readonly tables: ReadonlyMap<string, string>;
  /** What the functions in tables take, by their path: "RAIL_WORDS.frets". */
  readonly functions: ReadonlyMap<string, readonly Takes[]>;
}

const isLanguage = (name: unknown) => typeof name === 'string' && name.endsWith('/language.ts');

/** Names under which a file has what language.ts exports: local name → exported name. */
function importedNames(program: SyntaxNode): Map<string, string> {
  const names = new Map<string, string>();
  for (const node of nodesOf(program['body'])) {
    if (node.type !== 'ImportDeclaration' || !isLanguage((node['source'] as SyntaxNode)['value'])) continue;
    for (const one of nodesOf(node['specifiers'])) {
      if (one.type === 'ImportSpecifier')
        names.set((one['local'] as SyntaxNode)['name'] as string, (one['imported'] as SyntaxNode)['name'] as string);
    }
  }
  return names;
}

function typeOf(parameter: SyntaxNode): Takes {
  const pattern = parameter.type === 'AssignmentPattern' ? (parameter['left'] as SyntaxNode) : parameter;
  const annotation = pattern['typeAnnotation'];
  const type = isNode(annotation) ? annotation['typeAnnotation'] : undefined;
  if (!isNode(type)) return 'other';
  if (type.type === 'TSStringKeyword') return 'text';
  if (type.type === 'TSNumberKeyword') return 'number';
  if (type.type === 'TSBooleanKeyword') return 'flag';
  if (type.type === 'TSArrayType' || type.type === 'TSTypeOperator') return 'list';
  if (type.type === 'TSUnionType') {
    const parts = nodesOf(type['types']);
    const words = parts.map((part) => literalText(part['literal']));
    if (words.every((word) => word !== undefined)) return words;
    if (parts.some((part) => part.type === 'TSStringKeyword')) return 'text';
  }
  return 'other';
}

function functionsIn(path: string, value: unknown, found: Map<string, readonly Takes[]>): void {
  if (!isNode(value)) return;
  if (value.type === 'TSSatisfiesExpression' || value.type === 'TSAsExpression')
    functionsIn(path, value['expression'], found);
  else if (value.type === 'ObjectExpression')
    for (const property of nodesOf(value['properties'])) {
      const key = property['key'] as SyntaxNode | undefined;
      const name = key?.type === 'Identifier' ? (key['name'] as string) : literalText(key);
      if (name !== undefined) functionsIn(`${path}.${name}`, property['value'], found);
    }
  else if (value.type === 'ArrayExpression')
    nodesOf(value['elements']).forEach((element, index) => functionsIn(`${path}.${index}`, element, found));
  else if (value.type === 'ArrowFunctionExpression') found.set(path, nodesOf(value['params']).map(typeOf));
}

/** @param files source files; those that import nothing of language.ts say nothing */
export function spokenIn(files: readonly SourceFile[]): Spoken {
  const tables = new Map<string, string>();
  const functions = new Map<string, readonly Takes[]>();
  for (const file of files) {
    const program = parse(file);
    const names = importedNames(program);
    if (names.size === 0) continue;
    const localOf = (exported: string) => [...names].find(([, name]) => name === exported)?.[0];
    walk(program, (node) => {
      if (node.type !== 'CallExpression') return;
      const callee = (node['callee'] as SyntaxNode)['name'];
      const given = nodesOf(node['arguments']);
      if (callee !== undefined && callee === localOf('words')) {
        const id = literalText(given[0]);
        if (id === undefined) throw new Error(`${file.path} has a table whose id is no plain text`);
        tables.set(id, file.path);
        functionsIn(id, given[1], functions);
      }
    });
  }
  return { tables, functions };
}
