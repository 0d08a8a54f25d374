/** Das Urteil über dem Bild, wie man es sich in der Werkstatt sagt. */
import type * as english from '../../en/workshop/verdict.ts';

export const VERDICT_WORDS: typeof english.VERDICT_WORDS = {
  title: 'Urteil',
  restTitle: 'Mehr vom Urteil',
  saw: (kerf, depth) => `${kerf} breit und ${depth} tief sägen;`,
  asTheyAre: (kerf) => `Schlitze bei ${kerf} lassen;`,
  seat: (method, tool, force) => {
    const verb = tool === 'hammer' ? 'einschlagen' : 'einpressen';
    if (method === 'glue') return 'von Hand einleimen;';
    const how = method === 'both' ? `mit Leim ${verb}` : verb;
    return force === '' ? `${how}, ohne Kraft;` : `${how}, etwa ${force} je Bund;`;
  },
  nip: (size) => `an jedem Ende ${size} Bundfuß ausklinken.`,
  nipNone: 'nichts auszuklinken.',
  expect: (fretted, settled) => `Zu erwarten: ${fretted} mit Bünden, ${settled} besaitet und gesetzt`,
  sure: (band) => ` (zu 90 % sicher: ${band}).`,
  unsure: '.',
  rod: (setting, relief) => `Spannstab: ${setting} für ${relief}.`,
  rodSnug: (relief) => `Spannstab nur anlegen: von selbst ${relief}.`,
  rodNearest: (setting, relief) => `Näher kommt der Spannstab nicht: ${setting}, ${relief}.`,
  chance: (of100) => `Das gelingt bei ${of100} von 100 solchen Hälsen.`,
  decides: (input) => `Am meisten entscheidet: ${input}.`,
  feel: (action, notes) => `Mittelstark gespielt bei ${action} Saitenlage: ${notes}.`,
  clean: 'jeder Ton ist sauber',
  buzz: (count) => `${count} schnarren`,
  notes: (count, of) => `${count} von ${of} Tönen`,
  not: (why) => `So wird er nicht wie gewünscht: ${why}`,
  rodStatus: {
    reached: '',
    'no-rod': 'Kein Spannstab kann ihn richten.',
    'cannot-forward': 'Der Spannstab biegt ihn nur nach hinten, und er liegt schon zu weit hinten.',
    'cannot-backward': 'Der Spannstab biegt ihn nur nach vorn, und er liegt schon zu weit vorn.',
    'too-weak': 'Der Spannstab ist zu schwach dafür.',
    'between-shapes': '',
    'no-nearer': 'Weiter gedreht biegt der Spannstab eine andere Stelle davon weg.',
  },
  stopped: (title) => `${title}.`,
  searching: 'Die kleinste Änderung, die hilft, wird gesucht …',
  change: (what) => `Kleinste Änderung, die hilft: ${what}.`,
  kerf: (to, from) => `${to} sägen, nicht ${from}`,
  depth: (to, from) => `Schlitze ${to} tief, nicht ${from}`,
  method: (label) => label,
  noChange: 'Kein anderes Sägeblatt, keine andere Tiefe oder Art des Einsetzens bringt ihn allein dahin.',
  take: 'Übernehmen',
  step: (what) => `Urteil: ${what}`,
};
