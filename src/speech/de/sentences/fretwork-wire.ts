/** Draht: falsch gebogen, Nickel, Abnutzung, Härte. */
import type { Sentences } from '../../catalogue.ts';

export const FRETWORK_WIRE_SENTENCES: Sentences = {
  // Mit falschem Radius
  'The wire is flatter than the board.': 'Der Draht ist flacher als das Griffbrett.',
  'The middle sits and the ends stand up. Pressed down they spring up again, at once or after the first season, and the player feels them at the edges.':
    'Die Mitte sitzt, und die Enden stehen auf. Niedergedrückt federn sie wieder hoch, gleich oder nach dem ersten Jahr, und beim Spielen spürt man sie an den Kanten.',
  'Bend tighter, to less than the board’s radius, so that the ends sit down first.':
    'Enger biegen, auf weniger als den Radius des Griffbretts, damit sich die Enden zuerst setzen.',
  'The wire is much tighter than the board.': 'Der Draht ist viel enger gebogen als das Griffbrett.',
  'The ends sit and the middle stands up. Hammering the middle flat spreads the wire: the ends walk outwards, the tang tears the slot, and the crown kinks.':
    'Die Enden sitzen, und die Mitte steht auf. Die Mitte flach zu schlagen streckt den Draht: Die Enden wandern nach außen, der Bundfuß reißt den Schlitz auf, und der Bundkopf knickt.',
  'Open the bend until the middle stands off by a few tenths only.':
    'Aufbiegen, bis die Mitte nur noch um wenige Zehntel absteht.',
  'Coiled wire goes on a flat board as it comes.': 'Draht von der Rolle kommt, wie er ist, auf ein flaches Griffbrett.',
  'The middle bulges up under every blow and the ends dig into the edges of the board.':
    'Die Mitte beult sich unter jedem Schlag auf, und die Enden graben sich in die Kanten des Griffbretts.',
  'Bend the coil open first, past straight, and let it spring back.':
    'Die Rolle erst aufbiegen, über gerade hinaus, und zurückfedern lassen.',
  'The bend runs out of the plane of the tang.': 'Der Draht ist aus der Ebene des Bundfußes heraus gebogen.',
  'The fret leans in its slot, one shoulder of the crown stands off, and the saw cut is prised open.':
    'Der Bund lehnt schief im Schlitz, eine Schulter des Bundkopfs steht ab, und der Sägeschnitt wird aufgehebelt.',
  'Guide the tang in a groove while bending; sight along every piece.':
    'Den Bundfuß beim Biegen in einer Nut führen; an jedem Stück entlangsehen.',

  // Nickel, Abnutzung, Biegen: was man weiß
  'The European limit is a rate of release: articles meant for direct and prolonged contact with the skin may not give off more than 0.5 µg of nickel per cm² and week (0.2 for posts in pierced skin), measured in artificial sweat by EN 1811.':
    'Der europäische Grenzwert gilt für die Abgabe: Was dazu bestimmt ist, unmittelbar und länger mit der Haut in Berührung zu kommen, darf nicht mehr als 0,5 µg Nickel je cm² und Woche abgeben (0,2 bei Stäben in durchstochener Haut), gemessen in künstlichem Schweiß nach EN 1811.',
  'It is not a limit on how much nickel an alloy contains, not a promise that someone already sensitised will not react, and its list of examples (earrings, watch cases, buttons …) names no frets. Whether fretting counts as prolonged contact is for the authorities to say.':
    'Er begrenzt nicht, wie viel Nickel eine Legierung enthält; er verspricht nicht, dass niemand mehr reagiert, der schon überempfindlich ist; und unter seinen Beispielen (Ohrringe, Uhrgehäuse, Knöpfe …) sind keine Bünde. Ob das Greifen auf Bünden als längere Berührung zählt, haben die Behörden zu sagen.',
  'Copper–nickel alloys give off far more than that in the test: used coins of CuNi25 about 30 µg/cm² in a week of artificial sweat. No figure for fret wire of nickel silver was found; treat it as giving off nickel.':
    'Kupfer-Nickel-Legierungen geben in der Prüfung weit mehr ab: gebrauchte Münzen aus CuNi25 etwa 30 µg/cm² in einer Woche in künstlichem Schweiß. Für Bunddraht aus Neusilber fand sich keine Zahl; gehen Sie davon aus, dass er Nickel abgibt.',
  'Stainless steel 304 contains about 8 to 10 % nickel and gives off hardly any: under 0.05 to 0.08 µg/cm² in a week. Free-machining grades with sulphur (303) exceed the limit. A person who reacts to nickel should still ask a doctor.':
    'Nichtrostender Stahl 304 enthält etwa 8 bis 10 % Nickel und gibt kaum etwas ab: unter 0,05 bis 0,08 µg/cm² in einer Woche. Automatenstähle mit Schwefel (303) liegen über dem Grenzwert. Wer auf Nickel reagiert, sollte trotzdem ärztlichen Rat holen.',
  'Nickel-free frets help little under strings wrapped with nickel-plated or nickel wire: ask for both.':
    'Nickelfreie Bünde helfen wenig unter Saiten, die mit vernickeltem Draht oder Nickeldraht umsponnen sind: Nach beidem fragen.',
  'Worn volume goes with load and sliding distance over hardness, so twice the hardness lasts about twice as long under the same strings. Hardness figures are typical ones: read the ratio as a direction, not a date.':
    'Was sich abnutzt, wächst mit Last und Gleitweg und sinkt mit der Härte; doppelt so hart hält unter den gleichen Saiten also etwa doppelt so lange. Die Härten sind übliche Werte: Das Verhältnis zeigt eine Richtung, kein Datum.',
  'Harder wire takes its toll on nippers, files and time: hardened cutters, and about twice the time to level and dress.':
    'Härterer Draht kostet Zangen, Feilen und Zeit: gehärtete Schneiden, und etwa doppelt so lange zum Abrichten und Verrunden.',
  'How far wire springs back depends on yield strength over stiffness, and on its height, not on hardness alone. Sticks of one alloy differ by temper: bend one and hold it to the board.':
    'Wie weit Draht zurückfedert, hängt von der Streckgrenze im Verhältnis zur Steifigkeit und von seiner Höhe ab, nicht von der Härte allein. Stangen einer Legierung sind verschieden hart gezogen: Eine biegen und ans Griffbrett halten.',
  'The alloy does not change how hard a pressed fret wedges: that comes from the width over the studs, the tang body and the kerf. All these metals are at least five times stiffer than the wood along its grain. In a glued slot the tang’s stiffness enters, but the thin glue beside it decides.':
    'Wie stark ein gepresster Bund keilt, ändert die Legierung nicht: Das machen die Breite über die Noppen, der Steg des Bundfußes und die Schlitzbreite. Alle diese Metalle sind mindestens fünfmal so steif wie das Holz längs der Faser. Im geleimten Schlitz zählt die Steifigkeit des Bundfußes mit, aber der dünne Leim daneben entscheidet.',

  // Woher
  'Regulation (EC) No 1907/2006 (REACH), Annex XVII, entry 27':
    'Verordnung (EG) Nr. 1907/2006 (REACH), Anhang XVII, Eintrag 27',
  'wording of entry 27; the entry does not define prolonged contact (ECHA, 2014 and 2017)':
    'Wortlaut des Eintrags 27; der Eintrag bestimmt nicht, was längere Berührung ist (ECHA, 2014 und 2017)',
  'Lidén & Carter, Nickel release from coins, Contact Dermatitis 44 (2001) 160 (abstract)':
    'Lidén & Carter, Nickel release from coins, Contact Dermatitis 44 (2001) 160 (Zusammenfassung)',
  'Euro Inox, Stainless Steel – The Safe Choice; a study of 316L, 304, 303 and 201 in artificial sweat (abstract)':
    'Euro Inox, Stainless Steel – The Safe Choice; eine Untersuchung von 316L, 304, 303 und 201 in künstlichem Schweiß (Zusammenfassung)',
  'Archard, J. Appl. Phys. 24 (1953) 981 (from memory); hardness typical, from memory':
    'Archard, J. Appl. Phys. 24 (1953) 981 (aus dem Gedächtnis); übliche Härten, aus dem Gedächtnis',
  'springback formula, see bending.ts': 'Formel der Rückfederung, siehe bending.ts',
  'mechanics/MODEL.md, seating and filled slots': 'mechanics/MODEL.md, Einsetzen und gefüllte Schlitze',
};
