/**
 * A text that somebody else wrote, set apart from the sentence it stands in: written from right to left, or with marks for
 * that which it does not close, it would turn the words around it too.
 *
 * It is put between FIRST STRONG ISOLATE and POP DIRECTIONAL ISOLATE. What is inside it cannot get out: a POP that closes
 * nothing of its own has no effect by itself and is left away (rule X6a), isolates that it leaves open are closed (BD9), and
 * each of its paragraphs is set apart alone, since a paragraph's end ends every isolate (X8). Other marks it leaves open end
 * with the isolate around them (X6a).
 * Source: Unicode Standard Annex #9, Unicode Bidirectional Algorithm, revision 48.
 */

const OPEN = '\u2068';
const CLOSE = '\u2069';
const OPENS_ISOLATE = /[\u2066-\u2068]/;

/**
 * Characters that read from right to left, whole blocks that are kept for such, and the marks and controls of direction.
 * Source: DerivedBidiClass.txt of the Unicode Character Database, its "@missing" lines for R and AL.
 */
const TURNS =
  /[\u0590-\u08ff\u200f\u202a-\u202e\u2066-\u2069\ufb1d-\ufdff\ufe70-\ufefe\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u;

/** What ends a paragraph: the characters of class B. */
const PARAGRAPH_ENDS = new RegExp(`(\r\n|[${'\n\r\u001c\u001d\u001e\u0085\u2029'}])`);

function isolatedParagraph(text: string): string {
  let inside = '';
  let open = 0;
  for (const character of text) {
    if (OPENS_ISOLATE.test(character)) open += 1;
    else if (character === CLOSE) {
      if (open === 0) continue;
      open -= 1;
    }
    inside += character;
  }
  return `${OPEN}${inside}${CLOSE.repeat(open + 1)}`;
}

/** The text as it can stand in a sentence; the text itself where nothing in it turns the direction. */
export function isolated(text: string): string {
  if (!TURNS.test(text)) return text;
  return text
    .split(PARAGRAPH_ENDS)
    .map((part, index) => (index % 2 === 1 || part === '' ? part : isolatedParagraph(part)))
    .join('');
}
