/** Parts of the note on the model that the page shows: a section of Markdown with paragraphs and tables. */

export type NoteBlock =
  | { readonly kind: 'text'; readonly text: string }
  /** Equations as they stand, indented in the note. */
  | { readonly kind: 'equations'; readonly text: string }
  | { readonly kind: 'table'; readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] };

/** Marks of emphasis, code and links are left out: the words are what matters here. */
function plain(markdown: string): string {
  return markdown
    .replace(/\[([^\]]+)\]\([^)]*\)/g, '$1')
    .replace(/\*\*([^*]+)\*\*|`([^`]+)`/g, (_all, bold?: string, code?: string) => bold ?? code ?? '')
    .trim();
}

const cellsOf = (line: string) =>
  line
    .replace(/^\||\|\s*$/g, '')
    .split('|')
    .map(plain);

const INDENT = '    ';
/** The column of the symbols behind the equations: on the page they stand closer. */
const GAP = /(?<=\S) {6,}/;
const CONTINUED = /^ {30,}/;

function blockOf(lines: readonly string[]): NoteBlock {
  if (lines.every((line) => line.startsWith(INDENT)))
    return {
      kind: 'equations',
      text: lines
        .map((line) => line.slice(INDENT.length).replace(CONTINUED, ' '.repeat(16)).replace(GAP, '    '))
        .join('\n'),
    };
  if (!lines[0].startsWith('|')) return { kind: 'text', text: plain(lines.map((line) => line.trim()).join(' ')) };
  const [head = '', _rule, ...rows] = lines;
  return { kind: 'table', head: cellsOf(head), rows: rows.map(cellsOf) };
}

/**
 * The blocks under the heading that contains some words, up to the next heading of that rank.
 * @returns an empty list when there is no such heading
 */
export function noteSection(markdown: string, heading: string): NoteBlock[] {
  const lines = markdown.split(/\r?\n/);
  const start = lines.findIndex((line) => line.startsWith('## ') && line.includes(heading));
  if (start < 0) return [];
  const end = lines.findIndex((line, at) => at > start && line.startsWith('## '));
  const blocks: string[][] = [[]];
  for (const line of lines.slice(start + 1, end < 0 ? undefined : end)) {
    if (line.trim() === '' || line.startsWith('- ')) blocks.push([]);
    if (line.trim() === '') continue;
    blocks.at(-1)!.push(line);
  }
  return blocks.filter((block) => block.length > 0).map(blockOf);
}
