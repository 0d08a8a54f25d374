/**
 * Texts that the source keeps instead of asking for them: a table that is read while a file is being loaded, or a function
 * that reads one and is called then. Such a text keeps the language of that moment.
 */
import { resolveImport } from './architecture.ts';
import { isNode, nodesOf, parse, type SyntaxNode } from './syntax.ts';
import type { SourceFile } from './source-files.ts';

const LANGUAGE_FILE = 'src/speech/language.ts';
/** What reads the language whenever it is called, and the ways in which a sentence is made on the spot. */
const ASKING = ['spokenLanguage', 'spokenLocale', 'say', 'sayText', 'withinSentence'];

interface Module {
  readonly path: string;
  readonly program: SyntaxNode;
  /** Local name → what it stands for: "path#name". */
  readonly names: ReadonlyMap<string, string>;
}

const isFunction = (node: SyntaxNode) =>
  ['FunctionDeclaration', 'FunctionExpression', 'ArrowFunctionExpression'].includes(node.type);

const isType = (node: SyntaxNode) =>
  node.type.startsWith('TS') &&
  !['TSAsExpression', 'TSSatisfiesExpression', 'TSNonNullExpression', 'TSInstantiationExpression'].includes(node.type);

const nameOf = (node: unknown) => (isNode(node) && node.type === 'Identifier' ? (node['name'] as string) : undefined);

/** Statements of a file that declare, without their `export`. */
function statements(program: SyntaxNode): SyntaxNode[] {
  return nodesOf(program['body']).flatMap((node) =>
    node.type === 'ExportNamedDeclaration' || node.type === 'ExportDefaultDeclaration'
      ? nodesOf(node['declaration'])
      : [node],
  );
}

function moduleOf(file: SourceFile, paths: ReadonlySet<string>): Module {
  const program = parse(file);
  const names = new Map<string, string>();
  for (const node of nodesOf(program['body'])) {
    if (node.type !== 'ImportDeclaration' || node['importKind'] === 'type') continue;
    const from = (node['source'] as SyntaxNode)['value'] as string;
    const target = from.startsWith('.') ? resolveImport(file.path, from, paths) : undefined;
    for (const one of nodesOf(node['specifiers'])) {
      if (target === undefined || one.type !== 'ImportSpecifier' || one['importKind'] === 'type') continue;
      names.set(nameOf(one['local'])!, `${target}#${nameOf(one['imported'])}`);
    }
  }
  for (const node of statements(program)) {
    const own =
      node.type === 'VariableDeclaration' ? nodesOf(node['declarations']).map((one) => one['id']) : [node['id']];
    for (const id of own) {
      const name = nameOf(id);
      if (name !== undefined) names.set(name, `${file.path}#${name}`);
    }
  }
  return { path: file.path, program, names };
}

/** Methods that call what they are given at once. */
const CALLS_AT_ONCE =
  /^(map|flatMap|forEach|filter|reduce|some|every|find|findIndex|findLast|from|sort|toSorted|fromEntries)$/;

function isRunAtOnce(parent: SyntaxNode | undefined, field: string): boolean {
  if (parent?.type !== 'CallExpression') return false;
  if (field === 'callee') return true;
  const callee = parent['callee'] as SyntaxNode;
  return callee.type === 'MemberExpression' && CALLS_AT_ONCE.test(nameOf(callee['property']) ?? '');
}

/** Calls back for every name that is read when a node is run, with how: called, or its value used. */
function reads(
  node: SyntaxNode,
  visit: (name: string, isCalled: boolean, at: number) => void,
  parent?: SyntaxNode,
  parentField = '',
): void {
  if (isType(node) || node.type === 'ImportDeclaration') return;
  if (isFunction(node) && !isRunAtOnce(parent, parentField)) return;
  if (node.type === 'Identifier') visit(node['name'] as string, false, node['start'] as number);
  const callee = node.type === 'TaggedTemplateExpression' ? node['tag'] : node['callee'];
  const called = nameOf(callee);
  if (called !== undefined && node.type !== 'NewExpression') visit(called, true, node['start'] as number);
  for (const [field, value] of Object.entries(node)) {
    const isLabel =
      (field === 'key' && node['computed'] !== true) ||
      (field === 'property' && node['computed'] !== true) ||
      (node.type === 'VariableDeclarator' && field === 'id') ||
      field === 'specifiers' ||
      ((field === 'callee' || field === 'tag') && called !== undefined);
    if (isLabel) continue;
    for (const child of nodesOf(value)) reads(child, visit, node, field);
  }
}

interface Spoken {
  readonly tables: Set<string>;
  readonly functions: Set<string>;
}

/** Declared functions of a file by "path#name". */
function functionsOf({ path, program }: Module): [string, SyntaxNode][] {
  return statements(program).flatMap((node): [string, SyntaxNode][] => {
    if (node.type === 'FunctionDeclaration') return [[`${path}#${nameOf(node['id'])}`, node]];
    if (node.type !== 'VariableDeclaration') return [];
    return nodesOf(node['declarations'])
      .filter((one) => isNode(one['init']) && isFunction(one['init']))
      .map((one) => [`${path}#${nameOf(one['id'])}`, one['init'] as SyntaxNode]);
  });
}

function spokenOf(modules: readonly Module[]): Spoken {
  const tables = new Set<string>();
  for (const { path, program, names } of modules)
    for (const node of statements(program))
      for (const one of nodesOf(node['declarations'])) {
        const init = isNode(one['init']) ? one['init'] : undefined;
        const callee = init?.type === 'CallExpression' ? nameOf(init['callee']) : undefined;
        if (callee !== undefined && names.get(callee) === `${LANGUAGE_FILE}#words`)
          tables.add(`${path}#${nameOf(one['id'])}`);
      }
  const functions = new Set(ASKING.map((name) => `${LANGUAGE_FILE}#${name}`));
  const all = modules.flatMap((module) => functionsOf(module).map(([key, body]) => ({ key, body, module })));
  for (let grew = true; grew;) {
    grew = false;
    for (const { key, body, module } of all) {
      if (functions.has(key)) continue;
      let speaks = false;
      reads(body['body'] as SyntaxNode, (name) => {
        const stands = module.names.get(name);
        speaks ||= stands !== undefined && (tables.has(stands) || functions.has(stands));
      });
      if (speaks) {
        functions.add(key);
        grew = true;
      }
    }
  }
  return { tables, functions };
}

/** @returns one line for each text that is kept: file, line and what is read there */
export function capturedTexts(files: readonly SourceFile[]): string[] {
  const paths = new Set(files.map(({ path }) => path));
  const modules = files.map((file) => moduleOf(file, paths));
  const spoken = spokenOf(modules);
  const found: string[] = [];
  for (const [index, { path, program, names }] of modules.entries()) {
    const text = files[index].text;
    for (const statement of nodesOf(program['body']))
      reads(statement, (name, isCalled, at) => {
        const stands = names.get(name);
        if (stands === undefined) return;
        if (spoken.tables.has(stands) || (isCalled && spoken.functions.has(stands)))
          found.push(`${path}:${text.slice(0, at).split('\n').length} ${name}`);
      });
  }
  return found;
}
