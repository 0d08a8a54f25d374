/**
 * What the source says to people, read from its syntax: the ids of its tables, the sentences of `say`, the texts that go
 * to `sayText` through a function beside it, and what the functions in tables take.
 */
import { isNode, literalText, nodesOf, parse, templateText, walk, type SyntaxNode } from './syntax.ts';
import type { SourceFile } from './source-files.ts';

/** What a parameter takes: any text, any number, yes or no, one of some words, a list, or something else. */
export type Takes = 'text' | 'number' | 'flag' | 'list' | 'other' | readonly string[];

export interface Spoken {
  /** Ids of tables, each with its file. */
  readonly tables: ReadonlyMap<string, string>;
  /** Sentences of `say`, and texts for `sayText`, each with its file. */
  readonly sentences: ReadonlyMap<string, string>;
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
    if (words.every((word) => word !== undefined)) return words as string[];
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

/** Functions of a file by name, with the names of their parameters and their bodies. */
function helpersOf(program: SyntaxNode): Map<string, { readonly names: (string | undefined)[]; body: SyntaxNode }> {
  const helpers = new Map<string, { names: (string | undefined)[]; body: SyntaxNode }>();
  const note = (name: unknown, made: unknown): void => {
    if (typeof name !== 'string' || !isNode(made)) return;
    if (made.type !== 'ArrowFunctionExpression' && made.type !== 'FunctionDeclaration') return;
    const names = nodesOf(made['params']).map((parameter) => {
      const pattern = parameter.type === 'AssignmentPattern' ? (parameter['left'] as SyntaxNode) : parameter;
      return pattern.type === 'Identifier' ? (pattern['name'] as string) : undefined;
    });
    helpers.set(name, { names, body: made['body'] as SyntaxNode });
  };
  walk(program, (node) => {
    if (node.type === 'VariableDeclarator') note((node['id'] as SyntaxNode)['name'], node['init']);
    if (node.type === 'FunctionDeclaration') note((node['id'] as SyntaxNode)['name'], node);
  });
  return helpers;
}

/** Functions of a file that hand a parameter on to `sayText`, straight or through each other: name → place of it. */
function handingOn(program: SyntaxNode, sayText: string): Map<string, Set<number>> {
  const places = new Map<string, Set<number>>([[sayText, new Set([0])]]);
  const helpers = helpersOf(program);
  for (let grew = true; grew;) {
    grew = false;
    for (const [name, { names, body }] of helpers)
      walk(body, (node) => {
        if (node.type !== 'CallExpression') return;
        const taken = places.get((node['callee'] as SyntaxNode)['name'] as string);
        for (const place of taken ?? []) {
          const given = nodesOf(node['arguments'])[place];
          const own = given?.type === 'Identifier' ? names.indexOf(given['name'] as string) : -1;
          if (own < 0 || places.get(name)?.has(own)) continue;
          places.set(name, (places.get(name) ?? new Set()).add(own));
          grew = true;
        }
      });
  }
  return places;
}

/** @param files source files; those that import nothing of language.ts say nothing */
export function spokenIn(files: readonly SourceFile[]): Spoken {
  const tables = new Map<string, string>();
  const sentences = new Map<string, string>();
  const functions = new Map<string, readonly Takes[]>();
  for (const file of files) {
    const program = parse(file);
    const names = importedNames(program);
    if (names.size === 0) continue;
    const localOf = (exported: string) => [...names].find(([, name]) => name === exported)?.[0];
    const sayText = localOf('sayText');
    const places = sayText === undefined ? new Map<string, Set<number>>() : handingOn(program, sayText);
    walk(program, (node) => {
      if (node.type === 'TaggedTemplateExpression' && (node['tag'] as SyntaxNode)['name'] === (localOf('say') ?? '')) {
        sentences.set(templateText(node['quasi'] as SyntaxNode), file.path);
      }
      if (node.type !== 'CallExpression') return;
      const callee = (node['callee'] as SyntaxNode)['name'];
      const given = nodesOf(node['arguments']);
      if (callee !== undefined && callee === localOf('words')) {
        const id = literalText(given[0]);
        if (id === undefined) throw new Error(`${file.path} has a table whose id is no plain text`);
        tables.set(id, file.path);
        functionsIn(id, given[1], functions);
      }
      for (const place of places.get(callee as string) ?? []) {
        const text = literalText(given[place]);
        if (text !== undefined) sentences.set(text, file.path);
      }
    });
  }
  return { tables, sentences, functions };
}
