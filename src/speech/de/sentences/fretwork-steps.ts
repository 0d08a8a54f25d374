/** Die Arbeitsschritte des Bundierens mit ihren Zahlen. */
import type { Sentences } from '../../catalogue.ts';

export const FRETWORK_STEP_SENTENCES: Sentences = {
  '{0}, least': '{0}, kleinster Wert',
  '{0}, greatest': '{0}, größter Wert',

  'Pull the old frets': 'Alte Bünde ziehen',
  'Look in the record how they were seated: glue lets go with heat. Warm each fret with an iron, start at an end with flush-ground nippers, and lift in small bites along the slot without prying. Keep them in order until the new ones are in.':
    'In den Aufzeichnungen nachsehen, wie sie eingesetzt wurden: Leim löst sich mit Wärme. Jeden Bund mit einem Lötkolben erwärmen, mit bündig geschliffener Zange an einem Ende ansetzen und in kleinen Bissen längs des Schlitzes heben, ohne zu hebeln. Der Reihe nach aufheben, bis die neuen drin sind.',
  'Mend the slots': 'Schlitze ausbessern',
  'Glue lifted chips back before anything else. Measure the kerf of every slot and enter the odd ones as a region: old slots are rarely alike. Measure the bow of the bare board too.':
    'Vor allem anderen abgehobene Splitter wieder anleimen. Die Breite jedes Schlitzes messen und die abweichenden als Strecke eingeben: Alte Schlitze sind selten gleich. Auch messen, wie das leere Griffbrett gebogen ist.',

  'Level the board': 'Griffbrett abrichten',
  'Bring the board dead straight under a straightedge{0}, and check its radius along its whole length. Every fault here comes back in the fret tops. Where the plan asks for a camber, plane it in now.':
    'Das Griffbrett unter dem Lineal völlig gerade abrichten{0} und seinen Radius auf ganzer Länge prüfen. Jeder Fehler kommt in den Bundoberkanten wieder. Wo der Plan eine Wölbung verlangt, sie jetzt hineinhobeln.',
  ', with the rod neither pulling nor pushing': ', während der Spannstab weder zieht noch drückt,',

  'Deepen the slots where needed': 'Schlitze vertiefen, wo nötig',
  'Saw the slots': 'Schlitze sägen',
  'Only where a gauge shows less than the depth needed. A saw with more set than the old one widens the slot: match its kerf.':
    'Nur, wo die Tiefenlehre weniger als die Mindesttiefe zeigt. Eine Säge mit mehr Schränkung als die alte weitet den Schlitz: eine mit gleicher Schnittbreite nehmen.',
  'Saw against a fence, square to the centre line. Try saw and depth stop on an offcut of the same board first.':
    'An einem Anschlag sägen, im rechten Winkel zur Mittellinie. Säge und Tiefenanschlag erst an einem Abschnitt desselben Griffbretts probieren.',
  'The cut is straight, so it is shallower at the edges by the board’s drop: set the stop at the centre line.':
    'Der Schnitt ist gerade, also an den Kanten um die Wölbung des Griffbretts flacher: Den Anschlag an der Mittellinie einstellen.',
  'The floor follows the radius: the same depth everywhere below the surface.':
    'Der Grund folgt dem Radius: überall gleich tief unter der Oberfläche.',
  'Stop the saw at the binding lines that stay whole; finish the corners with a narrow chisel or a stopped cutter.':
    'Vor den Lagen der Einfassung, die ganz bleiben, mit der Säge anhalten; die Ecken mit einem schmalen Stecheisen oder einem Fräser mit Anschlag fertigmachen.',
  'The slots run out through both edges.': 'Die Schlitze laufen durch beide Kanten hinaus.',
  'Depth at the centre line': 'Tiefe an der Mittellinie',
  'Depth needed there': 'Mindesttiefe dort',
  'Board left below, least': 'Restdicke darunter, kleinste',

  'Clean the slots out': 'Schlitze reinigen',
  'Run a narrow hook or an old saw blade along every slot to its full depth: dust packs in the corners{0}. Glue and filler of inlays that a slot crosses must come out to full depth too: one grain of it lifts the fret and wedges where you did not mean to.':
    'Mit einem schmalen Haken oder einem alten Sägeblatt jeden Schlitz bis auf den Grund durchziehen: Staub setzt sich in den Ecken fest{0}. Wo ein Schlitz Einlagen kreuzt, müssen auch deren Leim und Füllstoff bis auf den Grund heraus: Ein Körnchen davon hebt den Bund und keilt, wo es nicht soll.',
  ', and filler and glue from the binding stand in the ends':
    ', und in den Enden stehen Füllstoff und Leim von der Einfassung',

  'Gauge the kerf': 'Schlitzbreite nachmessen',
  'Try a feeler gauge or a length of tang in every tenth slot and in the offcut. A few hundredths of a millimetre decide between no bite and a bowed neck: enter what you measure, and look at the prediction again.':
    'In jedem zehnten Schlitz und im Abschnitt eine Fühlerlehre oder ein Stück Bundfuß probieren. Wenige hundertstel Millimeter entscheiden, ob nichts greift oder der Hals krumm wird: Das Gemessene eingeben und die Vorhersage noch einmal ansehen.',
  'Kerf in this plan': 'Schlitzbreite in diesem Plan',
  'Tang body': 'Steg des Bundfußes',
  'Over the studs': 'Über die Noppen',

  'Chamfer the slot edges': 'Schlitzkanten fasen',
  'Break both edges of every slot with a fine triangular file. The chamfer lets the crown sit flat, and lets the next repairer lift the fret without tearing chips from the board. It must stay under the crown.':
    'Beide Kanten jedes Schlitzes mit einer feinen Dreikantfeile brechen. Dank der Fase liegt der Bundkopf satt auf, und wer den Bund einmal zieht, reißt keine Splitter aus dem Griffbrett. Sie muss unter dem Bundkopf bleiben.',
  'Chamfer per edge': 'Fase je Kante',
  'At most': 'Höchstens',

  'Bend the wire': 'Draht biegen',
  'The wire is used as it comes; sight along every piece and straighten what is not.':
    'Der Draht wird genommen, wie er kommt; an jedem Stück entlangsehen und richten, was nicht gerade ist.',
  'Bend before cutting, the tang guided in a groove.':
    'Vor dem Ablängen biegen, den Bundfuß dabei in einer Nut führen.',
  'The coil is tighter than the frets shall be: bend it open{0}.':
    'Die Rolle ist enger, als die Bünde werden sollen: Den Draht aufbiegen{0}.',
  ', to straight': ', bis er gerade ist',
  'Hold a first piece to the board and correct: alloys differ from batch to batch.':
    'Ein erstes Stück ans Griffbrett halten und nachbessern: Legierungen fallen von Lieferung zu Lieferung anders aus.',
  'Radius of the free wire': 'Radius des freien Drahts',
  'Bend open past straight to': 'Aufbiegen, über gerade hinaus, auf',
  'Bend to': 'Biegen auf',

  'Cut the frets to length': 'Bünde ablängen',
  'Cut with the oversize on both ends and lay the pieces out in order in a numbered rack.':
    'Mit dem Überstand an beiden Enden ablängen und die Stücke der Reihe nach in einen nummerierten Halter legen.',
  Length: 'Länge',
  'Wire in all, with spare': 'Draht im Ganzen, mit Ersatz',

  'Nip the tang ends': 'Bundfußenden abzwicken',
  'Nip the tang off under both ends, so that the crown can lie over the binding lines left whole, and file the burr flat: what stands proud there lifts the end.':
    'Den Bundfuß unter beiden Enden abzwicken, damit der Bundkopf über den Lagen der Einfassung liegen kann, die ganz bleiben, und den Grat eben feilen: Was dort vorsteht, hebt das Ende.',
  'Nip at each end': 'Abzwicken je Ende',
  'Shelf under the crown': 'Auflage unter dem Bundkopf',

  'Protect the board': 'Griffbrett schützen',
  'Wax or mask the board beside every slot, keeping the slot itself clean. Degrease tangs. {0}':
    'Das Griffbrett neben jedem Schlitz wachsen oder abkleben, den Schlitz selbst sauber halten. Die Bundfüße entfetten. {0}',
  '{0}: run a bead along the slot, no more than fills it, and seat the fret before the glue sets. What is squeezed out is wasted and must come off.':
    '{0}: eine Raupe in den Schlitz laufen lassen, nicht mehr, als ihn füllt, und den Bund einsetzen, ehe der Leim anzieht. Was herausquillt, ist verschwendet und muss wieder ab.',
  'Per slot, mean': 'Je Schlitz, im Mittel',
  'For all slots': 'Für alle Schlitze',
  'Open time, at least': 'Offene Zeit, mindestens',
  'Open time, at most': 'Offene Zeit, höchstens',

  'Lay the frets in': 'Bünde einlegen',
  'Hammer the frets in': 'Bünde einschlagen',
  'Press the frets in': 'Bünde einpressen',
  '{0} {1} Look under every crown against the light: no gap may show.{2}':
    '{0} {1} Gegen das Licht unter jeden Bundkopf sehen: Kein Spalt darf sich zeigen.{2}',
  'Lay each fret in by hand and hold it down with a caul of the board’s radius: nothing may need force.':
    'Jeden Bund von Hand einlegen und mit einer Zulage im Radius des Griffbretts niederhalten: Nichts darf Kraft brauchen.',
  'Tap the ends in first, then work from both ends to the middle with light blows of a brass or faced hammer; heavy blows spread the crown.':
    'Erst die Enden anklopfen, dann von beiden Enden zur Mitte arbeiten, mit leichten Schlägen eines Messinghammers oder eines Hammers mit weicher Bahn; schwere Schläge drücken den Bundkopf breit.',
  'Press with a caul of the board’s radius or a little tighter, one steady stroke, and hold for a few seconds.':
    'Mit einer Zulage im Radius des Griffbretts oder etwas enger pressen, in einem ruhigen Hub, und einige Sekunden halten.',
  'Every fourth fret first, then those halfway between, then the rest: after each quarter the bow has the shape it will have in the end.':
    'Jeder vierte Bund zuerst, dann die in der Mitte dazwischen, dann der Rest: Nach jedem Viertel hat die Biegung die Form, die sie am Ende haben wird.',
  'From the nut on.': 'Vom Sattel an.',
  'From the last fret on.': 'Vom letzten Bund an.',
  ' Work fret by fret within the open time of the glue.': ' Bund für Bund in der offenen Zeit des Leims arbeiten.',
  'Frets in quarter {0}': 'Bünde im Viertel {0}',

  'Lay the straightedge on after each quarter': 'Lineal auflegen nach jedem Viertel',
  'Compare the bow with the table. If it runs ahead of the prediction by more than the band, stop and follow the advice beside the table before another fret goes in.':
    'Die Biegung mit der Tabelle vergleichen. Eilt sie der Vorhersage um mehr als die Spanne voraus, anhalten und tun, was neben der Tabelle steht, bevor der nächste Bund hineingeht.',

  Clamp: 'Spannen',
  'Clamp under a caul of the board’s radius until the glue holds. Do not string before it has set through.':
    'Unter einer Zulage im Radius des Griffbretts spannen, bis der Leim hält. Nicht besaiten, bevor er durchgehärtet ist.',
  Clamped: 'Spannzeit',
  'Strung no sooner than': 'Besaiten frühestens nach',

  'Trim and bevel the ends': 'Enden kürzen und schrägen',
  'Cut the ends flush, file them down to the edge without touching the binding or the side, then bevel with the file held in a block and round the tips.{0}':
    'Die Enden bündig abschneiden und bis an die Kante feilen, ohne Einfassung oder Halsseite zu berühren, dann mit der Feile im Führungsklotz schrägen und die Spitzen runden.{0}',
  ' Fill what shows of the slots.': ' Füllen, was von den Schlitzen zu sehen ist.',
  'Bevel from the vertical': 'Schräge gegen die Senkrechte',
  'Foot short of the edge': 'Rückstand von der Kante',
  'Lost at the top, per end': 'Verlust oben je Ende',

  'Let the neck rest': 'Hals ruhen lassen',
  'Leave it flat and free, in the shop’s climate, and measure the bow again before levelling: this is the number for the bench log.':
    'Frei und eben liegen lassen, im Klima der Werkstatt, und die Biegung vor dem Abrichten noch einmal messen: Das ist die Zahl für das Messbuch.',
  // Die Dauer dahinter steht im dritten Fall (TIME_WORDS).
  Rest: 'Weiter nach',

  'Level, crown, polish': 'Abrichten, verrunden, polieren',
  'Ink the tops, level until the file touches every fret, crown and polish. See the budget per fret; stop where a crown would fall below the least height, and take the bow out another way.':
    'Die Oberkanten einfärben, abrichten, bis die Feile jeden Bund berührt, verrunden und polieren. Den Vorrat jedes Bundes beachten; aufhören, wo ein Bundkopf unter die Mindesthöhe käme, und die Biegung auf andere Art herausnehmen.',
  'Crown as bought': 'Bundkopf wie gekauft',
  'Spent on unevenness': 'Verlust an Unebenheiten',
  'Least crown': 'Mindesthöhe des Bundkopfs',

  String: 'Besaiten',
  'String and set the rod': 'Besaiten und Spannstab einstellen',
  'Bring the strings up evenly, and let the neck settle for a day before judging its relief.{0}':
    'Die Saiten gleichmäßig hochstimmen und dem Hals einen Tag geben, sich zu setzen, bevor die Halskrümmung beurteilt wird.{0}',
  ' Then turn the rod, a quarter at a time.': ' Dann den Spannstab einstellen, je eine Viertelumdrehung.',
  'Relief wanted': 'Gewünschte Halskrümmung',

  Record: 'Aufschreiben',
  'Write down the kerf that was gauged, the bow after each quarter and at the end, the glue and how it lets go. The next person to pull these frets needs it.':
    'Die nachgemessene Schlitzbreite aufschreiben, die Biegung nach jedem Viertel und am Ende, den Leim und wie er sich löst. Wer diese Bünde einmal zieht, braucht es.',
};
