/** Woher Grenzen, Hinweise und Angaben kommen. */
import type * as english from '../../en/neck/sources.ts';

export const BASIS_WORDS: typeof english.BASIS_WORDS = {
  practice: 'Werkstattbrauch, ohne Quelle',
  assumption: 'Annahme des Programms, ohne Quelle',
  geometry: 'Geometrie dieses Entwurfs',
  prediction: 'diese Vorhersage',
  'prediction-and-margin': 'diese Vorhersage; Abstand: Werkstattbrauch',
  'levelling-budget': 'Abrichtvorrat dieses Entwurfs',
  springback: 'Biegen eines Rechteckquerschnitts über die Streckgrenze, und seine Rückfederung',
  'wedge-model': 'wie Noppen und Bundfuß auf die Schlitzwände drücken, wie dieses Programm es rechnet',
  'known-limit': 'Werkstattbrauch, ohne Quelle, neben dieser Vorhersage; die Tabelle unter „Wie gut es rechnet“',
  'wire-strength': 'kleinste Zugfestigkeiten nach ASTM A228; Abstand: Werkstattbrauch',
  'large-deflection':
    'ASTM D790, 12.3 (aus dem Gedächtnis): Biegung über ein Zehntel der Stützweite braucht eine Korrektur',
  'wood-stiffness':
    'Bereich der Hölzer in der Tabelle (Wood Handbook, Tropix), mit einem Spielraum von etwa der Hälfte',
  'wood-tables': 'die Veröffentlichungen hinter der Holztabelle; siehe „Griffbrettholz“',
  'shear-strength':
    'Scherfestigkeit von Laubhölzern längs der Faser, Wood Handbook, Regression (aus dem Gedächtnis); Abstand: Werkstattbrauch',
  'nickel-rule': 'Verordnung (EG) Nr. 1907/2006 (REACH), Anhang XVII, Eintrag 27; EN 1811',
  'nickel-rule-wording':
    'Wortlaut des Eintrags 27; der Eintrag bestimmt nicht, was längere Berührung ist (ECHA, 2014 und 2017)',
  'nickel-coins': 'Lidén & Carter, Nickel release from coins, Contact Dermatitis 44 (2001) 160 (Zusammenfassung)',
  'nickel-steels':
    'Euro Inox, Stainless Steel – The Safe Choice; eine Untersuchung von 316L, 304, 303 und 201 in künstlichem Schweiß (Zusammenfassung)',
  'nickel-strings':
    'Režić, Ćurković & Ujević, Corrosion Science 51 (2009) 1985: vernickelte Saiten in künstlichem Schweiß (Zusammenfassung)',
  archard: 'Archard, J. Appl. Phys. 24 (1953) 981 (aus dem Gedächtnis); übliche Härten, aus dem Gedächtnis',
  'dust-rule': 'IARC-Gruppe 1; Richtlinie 2004/37/EG in der Fassung von (EU) 2017/2398 (aus dem Gedächtnis)',
  'toxic-woods':
    'Merkblatt der britischen HSE über giftige Hölzer, und eine Tafel der Holzgiftigkeit nach Woods & Calnan (1976)',
  'listed-species': 'Anmerkungen der Holztabelle; Checklist of CITES Species',
};

export const MARK_WORDS: typeof english.MARK_WORDS = {
  src: 'in der genannten Quelle gelesen',
  mem: 'aus dem Gedächtnis, nach der genannten Quelle',
  calc: 'hier gerechnet',
  practice: 'Werkstattbrauch, ohne Quelle',
};
