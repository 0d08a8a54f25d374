/** Was an Entwürfen und Projektdateien abgelehnt wird, und warum. */
import type { Sentences } from '../../catalogue.ts';

export const BUILD_SENTENCES: Sentences = {
  // Was zusammen nicht geht. Zahlen mit Einheit stehen mit Punkt da; das Komma und die Einheit der Seite kommen dazu.
  '{0} is {1}{2}; here it can be {3} {4}{5}: {6}.': '„{0}“ ist {1}{2}; hier möglich ist {3} {4}{5}: {6}.',
  'at least': 'mindestens',
  'at most': 'höchstens',
  'the cone goes on narrowing to the end of the board, where its radius must still be as large as the board is wide':
    'Der Kegel wird bis zum Ende des Griffbretts enger, und noch dort muss sein Radius so groß sein, wie das Griffbrett breit ist',
  'the board has only {0} frets': 'Das Griffbrett hat nur {0} Bünde',
  'with this scale the last two crowns would stand closer than {0} mm on the board':
    'Bei dieser Mensur bliebe zwischen den letzten beiden Bundköpfen weniger als {0} mm Griffbrett',
  'the board is {0} mm thick under the slot at its thinnest, and {1} mm must stay':
    'Das Griffbrett ist unter dem Schlitz an der dünnsten Stelle {0} mm dick, und {1} mm müssen bleiben',
  'a flat cut must still be a slot at the edge of the board, which lies {0} mm lower':
    'Ein gerader Schnitt muss auch an der Kante des Griffbretts noch ein Schlitz sein, und die liegt {0} mm tiefer',
  'the crown must cover the slot': 'Der Bundkopf muss den Schlitz decken',
  'studs stand out from the tang, so they are at least as wide':
    'Die Noppen stehen vom Steg ab, darum ist der Bundfuß über die Noppen mindestens so breit',
  'the crown must cover the studs': 'Der Bundkopf muss die Noppen decken',
  'board, shoulder and back must fit into it all along the neck':
    'Griffbrett, Schulter und Rückseite müssen auf der ganzen Länge des Halses darin Platz haben',
  'there are only {0} lines of binding': 'Mehr Lagen hat die Einfassung nicht ({0})',
  'Binding lines': 'Lagen der Einfassung',
  'The binding lines are {0} mm thick together; at this nut they can be at most {1} mm per side.':
    'Die Lagen der Einfassung sind zusammen {0} mm dick; an diesem Sattel möglich sind höchstens {1} mm je Seite.',
  'the strings must clear the frets': 'Die Saiten müssen frei über die Bünde laufen',
  'the rod must end under the board': 'Der Spannstab muss unter dem Griffbrett enden',
  'a one-way rod can only be tightened': 'Ein einseitiger Spannstab lässt sich nur anziehen',
  '{0} mm of wood must stay under the bar at the nut':
    'Am Sattel müssen unter dem Versteifungsstab {0} mm Holz bleiben',
  'bars and channel can take at most 0.6 of the width at the nut':
    'Versteifungsstäbe und Spannstabnut dürfen am Sattel höchstens 60 % der Breite einnehmen',
  'Region of frets': 'Strecke von Bünden',
  'Region {0} runs from fret {1} to fret {2}; on this neck it can run from a fret to a later one, up to {3}.':
    'Strecke {0} geht von Bund {1} bis Bund {2}; auf diesem Hals geht sie von einem Bund bis zu einem späteren, höchstens bis Bund {3}.',
  'Width over the studs in the region': 'Breite über die Noppen in der Strecke',
  'Region {0} has studs {1} mm wide on a tang of {2} mm; over the studs it is at least as wide as the tang.':
    'In Strecke {0} misst der Bundfuß über die Noppen {1} mm und im Steg {2} mm; über die Noppen ist er mindestens so breit wie im Steg.',
  'the crown must cover the slots and studs of every region':
    'Der Bundkopf muss Schlitze und Noppen jeder Strecke decken',
  'Measured relief per fret': 'Gemessene Halskrümmung je Bund',
  '{0} reliefs are listed for {1} frets; list one for each fret, or none.':
    'Die Liste der Halskrümmungen hat die Länge {0}, der Hals hat {1} Bünde; möglich ist eine für jeden Bund oder keine.',
  'Neck laminates': 'Streifen des Halses',
  'The shares of the neck’s laminates sum to {0}; they must sum to 1.':
    'Die Anteile der Streifen des Halses ergeben zusammen {0}; es muss 1 sein.',
  'String core diameter': 'Kerndurchmesser der Saite',
  'String {0} has a core of {1} mm in a diameter of {2} mm; the core must be at least 0.1 mm less.':
    'Saite {0} hat einen Kern von {1} mm bei einem Durchmesser von {2} mm; der Kern muss mindestens 0.1 mm dünner sein.',

  // Was in Listen steht
  'string diameter': 'Saitendurchmesser',
  'string core diameter': 'Kerndurchmesser',
  'pitch as a MIDI note number': 'Ton als MIDI-Notennummer',
  'binding line thickness': 'Dicke der Lage',
  'share of the width': 'Anteil an der Breite',
  'first fret of the region': 'erster Bund der Strecke',
  'last fret of the region': 'letzter Bund der Strecke',
  'kerf in the region': 'Schlitzbreite in der Strecke',
  'tang body width in the region': 'Stegdicke des Bundfußes in der Strecke',
  'width over the studs in the region': 'Breite über die Noppen in der Strecke',
  'measured relief': 'gemessene Halskrümmung',
  'Name of the build': 'Name des Entwurfs',
  Notes: 'Notizen',
  Strings: 'Saiten',
  'Regions of frets': 'Strecken von Bünden',
  wood: 'Holz',
  'colour as #rrggbb': 'Farbe als #rrggbb',
  'string construction': 'Machart der Saite',
  '{0}, entry {1}{2}': '{0}, Eintrag {1}{2}',

  // Falsche Werte
  '{0} to {1}': '{0} bis {1}',
  '{0} to {1}{2}': '{0} bis {1}{2}',
  '{0} is not something a build has.': '{0} kommt in einem Entwurf nicht vor.',
  '{0} ({1}) is missing{2}.': '„{0}“ ({1}) fehlt{2}.',
  '; it takes {0}': '; möglich ist {0}',
  '{0} ({1}) is {2}; it takes {3}.': '„{0}“ ({1}) ist {2}; möglich ist {3}.',
  '{0} ({1}) is {2}; it takes {3}{4}.': '„{0}“ ({1}) ist {2}; möglich ist {3}{4}.',
  '{0} ({1}) is {2} characters; it takes {3}.': '„{0}“ ({1}) hat {2} Zeichen; möglich sind {3}.',
  // Auch bei einem: „die Länge 1“.
  '{0} ({1}) is {2} entries; it takes {3}.': '„{0}“ ({1}) hat die Länge {2}; möglich ist {3}.',
  '{0} ({1}) is {2}; it takes one of: {3}.': '„{0}“ ({1}) ist {2}; möglich ist eines von: {3}.',
  '{0} ({1}) is {2}, which it does not take.': '„{0}“ ({1}) ist {2}, und das ist nicht möglich.',
  'at least {0} characters': 'mindestens {0} Zeichen',
  'at most {0} characters': 'höchstens {0} Zeichen',
  'at least {0} entries': 'mindestens {0}',
  'at most {0} entries': 'höchstens {0}',
  'a whole number': 'eine ganze Zahl',
  'a number': 'eine Zahl',
  'a string': 'ein Text',
  'a boolean': 'ja oder nein (true, false)',
  'an array': 'eine Liste',
  'an object': 'ein Objekt',
  // Steht nach „ist“.
  nothing: 'nicht angegeben',
  Build: 'Entwurf',
  'The build is {0}; it must be an object.': 'Der Entwurf ist {0}; möglich ist nur ein Objekt.',

  // Projektdateien
  'Project file': 'Projektdatei',
  'This is not a project file: it is not JSON ({0}).': 'Das ist keine Projektdatei: Es ist kein JSON ({0}).',
  'This is not a project file: it has no "format": "{0}".':
    'Das ist keine Projektdatei: Darin steht nicht "format": "{0}".',
  'The project file’s version is {0}; it must be a whole number from 1 to {1}.':
    'Die Version der Projektdatei ist {0}; möglich ist eine ganze Zahl von 1 bis {1}.',
  'The project file is of version {0}; this program reads versions 1 to {1}. Open it with a newer release.':
    'Die Projektdatei ist von Version {0}; dieses Programm liest bis Version {1}. Öffnen Sie sie mit einer neueren Fassung.',
};
