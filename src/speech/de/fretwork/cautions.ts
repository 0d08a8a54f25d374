/** Hinweise zur Sicherheit, dort wo sie zählen. */
import type * as english from '../../en/fretwork/cautions.ts';

export const CAUTION_WORDS: typeof english.CAUTION_WORDS = {
  caution: (about) => `Achtung: ${about}`,
  asAt: (step) => `wie bei Schritt ${step}.`,
  ownWood: 'Ihr eigenes Holz',
  names: {
    dust: 'Staub',
    'dust-sensitising': 'Staub, der überempfindlich macht',
    'wire-ends': 'Drahtenden',
    pressing: 'Pressen',
    glue: 'Leim',
    solvents: 'Lösemittel',
    strings: 'Saiten',
    rod: 'Spannstab',
    'listed-wood': 'geschütztes Holz',
    heat: 'Wärme',
  },
};

export const CAUTION_TEXTS: typeof english.CAUTION_TEXTS = {
  dust: 'Mit Absaugung und gut sitzender Staubmaske sägen und feilen, und die Schlitze aussaugen, nicht ausblasen. Hartholzstaub kann Nasenkrebs verursachen; der europäische Grenzwert am Arbeitsplatz ist 2 mg/m³ einatembarer Staub.',
  'dust-sensitising': (wood) =>
    `Der Staub des Griffbretts (${wood}) kann Haut, Augen und Atemwege reizen oder überempfindlich machen, manchmal erst nach Jahren ohne Beschwerden. Arme bedecken, vor dem Essen waschen.`,
  'wire-ends':
    'Abgezwickter Draht fliegt, und seine Enden sind scharf: Schutzbrille, in einen Lappen oder eine Schachtel zwicken, aufkehren, bevor dort jemand barfuß geht.',
  pressing:
    'Den Hals genau unter der Zulage oder dem Schlag stützen, Halsfuß und Kopfplatte frei. Finger weg unter der Presse.',
  glue: (glue, caution) => `Der Leim ist ${glue}. ${caution}`,
  solvents:
    'Alkohol, Aceton und Waschbenzin brennen: keine Flamme, kein Lötkolben, keine Funken in der Nähe, frische Luft, Lappen draußen ausgebreitet trocknen.',
  strings:
    'Eine Saite kann reißen: das Gesicht abwenden, wenn sie das erste Mal auf Ton kommt, und ihre Enden kurz abschneiden.',
  rod: 'Die Mutter des Spannstabs je eine Viertelumdrehung drehen und warten. Geht sie schwer, ist sie an ihrer Grenze: Dort aufhören. Ein gebrochener Spannstab lässt sich ersetzen, aber dafür muss der Hals geöffnet werden.',
  heat: 'Bügeleisen und Heizmatten verbrennen die Haut und können Holz, Lack und Zelluloid versengen oder entzünden: nie allein lassen, Brennbares fernhalten, nichts übereilen. Wärme, die das Holz bewegt, erweicht auch den Leim unter dem Griffbrett und um die Einlagen; vom Halsansatz eines eingeleimten Halses fernhalten. Die Anleitung des Geräts und die örtlichen Regeln entscheiden.',
  'listed-wood': (woods) =>
    `Der Handel mit diesem Holz (${woods}) kann nach dem Washingtoner Artenschutzübereinkommen (CITES) geregelt sein. Die geltende Liste prüfen, und den Nachweis, woher das Holz kommt, bei diesem Blatt aufheben.`,
};
