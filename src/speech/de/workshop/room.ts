/** Wo die Saiten schnarren. */
import type * as english from '../../en/workshop/room.ts';

export const ROOM_WORDS: typeof english.ROOM_WORDS = {
  strength: 'Gespielt',
  strengths: { soft: 'leise', medium: 'mittel', hard: 'kräftig' },
  direction: 'Angezupft',
  directions: { along: 'längs der Griffbrettfläche', away: 'vom Griffbrett weg', towards: 'zum Griffbrett hin' },
  withForce: (name, force) => `${name} (${force})`,
  grid: 'Freiraum unter jedem Ton, Saite für Saite',
  string: 'Saite',
  open: 'leer',
  numbers: (unit) => `Freiraum, ${unit}.`,
  signs: '! schnarrt, ? kann bei steifer Saite schnarren.',
  assumed: (force, place) => `Angenommen: Anschlag mit ${force}, ${place} vor der Stegeinlage.`,
  state: 'Besaitet und gesetzt, Spannstab eingestellt.',
  allClear: (notes) => `Alle ${notes} Töne sind frei.`,
  mayBuzz: (count, notes) => `Kein Ton schnarrt sicher; ${count} von ${notes} könnten es.`,
  buzz: (count, notes) => `${count} von ${notes} Tönen ${count === 1 ? 'schnarrt' : 'schnarren'}.`,
  buzzMore: (count, notes, more) =>
    `${count} von ${notes} Tönen ${count === 1 ? 'schnarrt' : 'schnarren'}, ${more} weitere könnten es.`,
  lowest: (lowest, now) => `Niedrigste Saitenlage für diesen Hals: ${lowest} am 12. Bund, jetzt ${now}.`,
  bestClear: (bow, room) => `Am meisten Freiraum: mit ${bow}, ${room} am engsten Ton.`,
  bestBuzzes: (bow, short) => `Am meisten Freiraum: mit ${bow}, aber der engste Ton liegt noch ${short} zu tief.`,
  cost: (more, room) => `${more} mehr Halskrümmung kosten davon ${room}.`,
  reliefBand: (from, to, low, high) =>
    `Bei einem Anschlag von ${from} bis ${to} liegt sie zwischen ${low} und ${high}.`,
  fallClear: (depth, fret, room) =>
    `Mit einem Abfall der letzten Bünde nach Bund ${fret}, am letzten ${depth}: ${room} Freiraum am engsten Ton.`,
  fallBuzzes: (depth, fret, short) =>
    `Mit einem Abfall der letzten Bünde nach Bund ${fret}, am letzten ${depth}, liegt der engste Ton noch ${short} zu tief.`,
  takeFall: (depth) => `Letzten Bund ${depth} tiefer feilen`,
  stepFall: (depth) => `Abfall der letzten Bünde: ${depth}`,
  asIs: 'Keine andere Halskrümmung lässt mehr Freiraum.',
  take: (bow) => `${bow} anstreben`,
  step: (bow) => `Gewünschte Halskrümmung: ${bow}`,
  openNote: (string) => `Saite ${string}, leer`,
  note: (string, fret) => `Saite ${string}, Bund ${fret}`,
  clears: (note, fret, room) => `${note}: geht ${room} über Bund ${fret} frei.`,
  mayTouch: (note, fret, room, short) =>
    `${note}: geht ${room} über Bund ${fret} frei, aber eine steife Saite kann bis zu ${short} zu tief schwingen.`,
  hits: (note, fret, short) => `${note}: schnarrt an Bund ${fret}, ${short} zu tief.`,
  pick: 'Einen Ton wählen, um seine Schwingung im Bild zu sehen.',
  swingOf: (note, bow) => `Im Bild: ${note}, ×${bow} wie die Biegung.`,
  play: 'Schwingung abspielen',
  pause: 'Anhalten',
  hide: 'Schwingung ausblenden',
  see: 'Zum Bild',
  showAgain: 'Schwingung zeigen',
  atFret: (fret, room) => `Bund ${fret}: ${room}`,
  buzzesFrom: (force) => `Ab ${force} beginnt sie zu schnarren.`,
};
