/** Values that a source file offers and that no other part of the program takes. */
import type { SourceFile } from './source-files.ts';
import { isNode, parse, type SyntaxNode } from './syntax.ts';

/** Names of the values that a file exports; types go with what they describe. */
export function exportedValues(file: SourceFile): string[] {
  const names: string[] = [];
  for (const node of (parse(file)['body'] as SyntaxNode[]) ?? []) {
    if (node.type !== 'ExportNamedDeclaration' || node['exportKind'] === 'type') continue;
    const declaration = node['declaration'];
    if (!isNode(declaration)) continue;
    if (/^(Function|Class)Declaration$/.test(declaration.type)) names.push(nameOf(declaration['id']));
    if (declaration.type === 'VariableDeclaration')
      for (const declarator of declaration['declarations'] as SyntaxNode[]) names.push(nameOf(declarator['id']));
  }
  return names.filter((name) => name !== '');
}

function nameOf(value: unknown): string {
  return isNode(value) && value.type === 'Identifier' ? (value['name'] as string) : '';
}

/**
 * Exports that nothing takes: neither another file nor, beyond the line that declares it, the file itself. A part that is
 * exported so that tests can try it alone is used by its own file, and is none of these.
 * @param files those that may take something, the sources among them
 */
export function unusedExports(sources: readonly SourceFile[], files: readonly SourceFile[]): string[] {
  const places = new Map<string, Set<string>>();
  const counts = new Map<string, number>();
  for (const { path, text } of files)
    for (const [name] of text.matchAll(/[A-Za-z_$][\w$]*/g)) {
      places.set(name, (places.get(name) ?? new Set()).add(path));
      counts.set(`${path} ${name}`, (counts.get(`${path} ${name}`) ?? 0) + 1);
    }
  return sources.flatMap((file) =>
    exportedValues(file)
      .filter((name) => (places.get(name)?.size ?? 0) <= 1 && (counts.get(`${file.path} ${name}`) ?? 0) <= 1)
      .map((name) => `${file.path}: ${name}`),
  );
}
