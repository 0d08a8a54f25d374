/** Which words belong to English and not to another language, by the texts of both in the source. */
import { isNode, literalText, nodesOf, parse, walk, type SyntaxNode } from './syntax.ts';
import { readFiles } from './source-files.ts';

const WORD = /\p{L}[\p{L}’'-]*\p{L}/gu;

export const wordsIn = (text: string): string[] => (text.match(WORD) ?? []).map((word) => word.toLowerCase());

/** Texts under a node, keys of objects left out. */
function textsUnder(node: SyntaxNode, texts: string[]): void {
  const text = literalText(node);
  if (text !== undefined) texts.push(text);
  else if (node.type === 'TemplateElement') texts.push((node['value'] as { cooked: string }).cooked);
  if (node.type === 'ImportDeclaration') return;
  for (const [field, value] of Object.entries(node)) {
    if (field === 'key' || field === 'typeAnnotation') continue;
    for (const child of nodesOf(value)) textsUnder(child, texts);
  }
}

/** English texts: what stands in tables. */
function englishTexts(): string[] {
  const texts: string[] = [];
  for (const file of readFiles('src', /\.tsx?$/)) {
    if (!file.text.includes(' words(')) continue;
    walk(parse(file), (node) => {
      if (node.type !== 'CallExpression' || (node['callee'] as SyntaxNode)['name'] !== 'words') return;
      const table = nodesOf(node['arguments'])[1];
      if (isNode(table)) textsUnder(table, texts);
    });
  }
  return texts;
}

/**
 * Words that only the English texts use, in small letters. Words that the other language uses too, such as "in" in German,
 * tell nothing.
 */
export function onlyEnglishWords(language: string): Set<string> {
  const others: string[] = [];
  for (const file of readFiles(`src/speech/${language}`, /\.ts$/)) textsUnder(parse(file), others);
  const known = new Set(others.flatMap(wordsIn));
  return new Set(
    englishTexts()
      .flatMap(wordsIn)
      .filter((word) => !known.has(word)),
  );
}
