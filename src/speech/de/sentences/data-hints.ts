/** Was die Größen des Entwurfs ändern, und woher ihre Werte kommen. */
import type { Sentences } from '../../catalogue.ts';

export const HINT_SENTENCES: Sentences = {
  // Der Hals
  'Vibrating length of the open string; it places every fret.':
    'Schwingende Länge der leeren Saite; sie bestimmt den Ort jedes Bundes.',
  'How many frets the board carries. More slots, more bow.':
    'Wie viele Bünde das Griffbrett trägt. Mehr Schlitze, mehr Biegung.',
  'Fret over the edge of the body. The neck is free up to here and hardly bends beyond.':
    'Bund über der Kante des Korpus. Bis hierher ist der Hals frei, dahinter biegt er sich kaum.',
  'Board width at the nut.': 'Breite des Griffbretts am Sattel.',
  'Board width at the last fret.': 'Breite des Griffbretts am letzten Bund.',
  'Board and neck together, at the centre. Stiffness grows with its third power.':
    'Griffbrett und Hals zusammen, in der Mitte. Die Steifigkeit wächst mit der dritten Potenz.',
  'Board and neck together, at the centre.': 'Griffbrett und Hals zusammen, in der Mitte.',
  '2 is half an ellipse; below leans towards a V, above towards a square U.':
    '2 ist eine halbe Ellipse; darunter geht es zum V, darüber zum eckigen U.',
  'Straight edge of the neck below the board before the back curves in.':
    'Gerade Kante des Halses unter dem Griffbrett, bevor die Rückseite sich rundet.',
  'Shape of the heel. The calculation sees its thickness and length only.':
    'Form des Halsfußes. In die Rechnung gehen nur seine Dicke und Länge ein.',
  'How much deeper the neck becomes at the body joint.': 'Um wie viel der Hals am Korpusansatz dicker wird.',
  'Over this length the neck thickens into the heel.': 'Auf dieser Länge wird der Hals zum Halsfuß hin dicker.',
  'Longitudinal modulus of the wood called “my own wood”.': 'E-Modul längs der Faser für das Holz „eigenes Holz“.',
  'Density at the moisture content of the shop. It sets how hard the studs bite.':
    'Rohdichte bei der Holzfeuchte in der Werkstatt. Sie bestimmt, wie fest die Noppen greifen.',

  // Rohlinge
  'A measured neck blank replaces the stiffness of the species and narrows the band.':
    'Ein gemessener Halsrohling ersetzt die Steifigkeit der Holzart und macht die Spanne enger.',
  'A measured board blank replaces the stiffness of the species and narrows the band.':
    'Ein gemessener Griffbrettrohling ersetzt die Steifigkeit der Holzart und macht die Spanne enger.',
  'Length of the rectangular blank that was measured.': 'Länge des rechteckigen Rohlings, der gemessen wurde.',
  'Width of the rectangular blank.': 'Breite des rechteckigen Rohlings.',
  'Thickness in the direction in which it bends.': 'Dicke in der Richtung, in der er sich biegt.',
  'Mass of the blank on the scale.': 'Masse des Rohlings auf der Waage.',
  'First bending frequency when hung at 22 % from both ends and tapped at the middle.':
    'Erste Biegefrequenz, wenn er bei 22 % von beiden Enden aufgehängt ist und in der Mitte angeschlagen wird.',
  'Distance between the two supports.': 'Abstand der beiden Auflager.',
  'Weight hung at mid-span: 1 kg pulls 9.81 N.':
    'Gewicht, das in der Mitte zwischen den Auflagern hängt: 1 kg zieht mit 9,81 N.',
  'How far the middle goes down under that weight.': 'Wie weit die Mitte unter diesem Gewicht nachgibt.',

  // Das Griffbrett
  'Its density decides how firmly the studs bite; its stiffness joins the neck’s.':
    'Seine Rohdichte entscheidet, wie fest die Noppen greifen; seine Steifigkeit kommt zu der des Halses hinzu.',
  'Which way the growth rings stand. It changes stiffness across the grain only.':
    'Wie die Jahresringe stehen. Das ändert nur die Steifigkeit quer zur Faser.',
  'At the centre line, on top of the neck.': 'An der Mittellinie, oben auf dem Hals.',
  'The arc across the strings.': 'Der Bogen quer unter den Saiten.',
  'Radius of the board; on a conical board, at the nut.':
    'Radius des Griffbretts; bei einem konischen der Radius am Sattel.',
  'Radius of a conical board at the last fret.': 'Radius eines konischen Griffbretts am letzten Bund.',
  'How far the board runs on after the last fret.': 'Wie weit das Griffbrett hinter dem letzten Bund weitergeht.',

  // Der Draht
  'Nickel, hardness and springback come from the alloy; the wedge comes from the tang.':
    'Nickel, Härte und Rückfederung kommen von der Legierung; der Keil kommt vom Bundfuß.',
  'Width of the crown at its foot.': 'Breite des Bundkopfs an seinem Fuß.',
  'From the board to the top of the crown, as bought. Levelling spends it.':
    'Vom Griffbrett bis zur Oberkante des Bundkopfs, wie gekauft. Abrichten verbraucht sie.',
  'Thickness of the tang between its studs. Wider than the kerf, it wedges hard.':
    'Dicke des Bundfußes zwischen seinen Noppen. Ist sie größer als die Schlitzbreite, keilt er hart.',
  'Tang width measured over the studs on both sides.': 'Breite des Bundfußes, über die Noppen beider Seiten gemessen.',
  'From the underside of the crown to the foot of the tang.':
    'Von der Unterseite des Bundkopfs bis zum unteren Ende des Bundfußes.',
  'Area with which one stud stands against the slot wall.': 'Fläche, mit der eine Noppe gegen die Schlitzwand steht.',
  'Distance from stud to stud on one side of the tang.': 'Abstand von Noppe zu Noppe auf einer Seite des Bundfußes.',
  'Below this a crown is too low to play well or to level again.':
    'Darunter ist ein Bundkopf zu niedrig, um gut spielbar zu sein oder noch einmal abgerichtet zu werden.',
  'What filing, crowning and polishing take off every crown besides the bow: uneven wire and seating.':
    'Was Feilen, Verrunden und Polieren außer der Biegung von jedem Bundkopf nehmen: ungleicher Draht und ungleicher Sitz.',
  'Sticks are cut with least waste. A coil comes bent, and is bent on from there.':
    'Stangen werden mit dem kleinsten Verschnitt geteilt. Eine Rolle kommt gebogen und wird von da aus weitergebogen.',
  'Length of one stick of wire.': 'Länge einer Stange Draht.',
  'Radius to which the wire is bent as it comes.': 'Radius, auf den der Draht gebogen ist, wie er kommt.',
  'What the nippers crush or the saw takes between two pieces.':
    'Was die Zange zwischen zwei Stücken quetscht oder die Säge wegnimmt.',
  'Wire to order beyond what the frets take, in whole spare frets.':
    'Draht, der über den Bedarf der Bünde hinaus bestellt wird, in ganzen Ersatzbünden.',
  'Radius of the bent wire as a share of the board’s. Below 100 the ends sit down first. A flat board takes straight wire.':
    'Radius des gebogenen Drahts als Anteil am Griffbrettradius. Unter 100 setzen sich die Enden zuerst. Ein flaches Griffbrett nimmt geraden Draht.',
  'Ask before choosing the wire. It only adds a check.':
    'Fragen Sie danach, bevor Sie den Draht wählen. Es kommt nur eine Prüfung hinzu.',

  // Die Schlitze
  'Width of the saw cut. A few hundredths decide between no bite and a bowed neck.':
    'Breite des Sägeschnitts. Wenige Hundertstel entscheiden, ob nichts greift oder der Hals krumm wird.',
  'Below the board’s surface at the centre line. It must clear the tang.':
    'Unter der Oberfläche des Griffbretts, an der Mittellinie. Der Bundfuß muss frei darin stehen.',
  'Least depth that must be left under the foot of the tang, for dust, glue and filler.':
    'Wie viel unter dem Bundfuß mindestens frei bleiben muss, für Staub, Leim und Füllstoff.',
  'A flat cut in a radiused board is shallower at the edges than at the centre.':
    'Ein gerader Schnitt in einem gewölbten Griffbrett ist an den Kanten weniger tief als in der Mitte.',
  'Width of the bevel on each edge of the slot; it saves the board at the next refret.':
    'Breite der Schräge an jeder Kante des Schlitzes; sie schont das Griffbrett bei der nächsten Neubundierung.',

  // Das Einsetzen
  'Pressed frets wedge the board. Glued ones fill the slot. Pressed and glued do both.':
    'Gepresste Bünde verkeilen das Griffbrett. Geleimte füllen den Schlitz. Gepresste und geleimte tun beides.',
  'It decides the steps on the bench sheet, not the forces.':
    'Davon hängen die Schritte auf dem Werkstattblatt ab, nicht die Kräfte.',
  'Spread out, each quarter of the frets makes about a quarter of the bow, so the straightedge tells early.':
    'Verteilt eingesetzt, macht jedes Viertel der Bünde etwa ein Viertel der Biegung, und das Lineal zeigt sie früh.',
  'Sets the open time, the clamping time and the cautions. The stiffness below is a number of its own.':
    'Bestimmt offene Zeit, Spannzeit und Sicherheitshinweise. Die Steifigkeit darunter ist eine Zahl für sich.',
  'Modulus of the set glue.': 'E-Modul des gehärteten Leims.',
  'Share of the slot depth, from the top, that the glue reaches.':
    'Bis zu welchem Anteil der Schlitztiefe der Leim reicht, von oben.',

  // Kanten und Einfassung
  'Lines of binding and purfling along each edge of the board. 0 is an unbound board.':
    'Lagen von Einfassung und Zierspänen an jeder Kante des Griffbretts. 0 ist ein Griffbrett ohne Einfassung.',
  'How many lines, from the wood outwards, the saw passes through. The crown rests on the rest.':
    'Durch wie viele Lagen, vom Holz nach außen, die Säge hindurchgeht. Auf den übrigen liegt der Bundkopf auf.',
  'Air between the end of the nipped tang and the binding left whole.':
    'Luft zwischen dem Ende des abgezwickten Bundfußes und der Einfassung, die ganz bleibt.',
  'Angle by which the filed fret end leans in from the vertical.':
    'Winkel, um den sich das gefeilte Bundende gegen die Senkrechte nach innen neigt.',
  'How far the foot of the crown stops short of the edge of the board after filing.':
    'Wie weit der Fuß des Bundkopfs nach dem Feilen hinter der Kante des Griffbretts zurückbleibt.',
  'Wire left over each edge before it is cut flush and filed.':
    'Draht, der über jede Kante steht, bevor er bündig abgeschnitten und gefeilt wird.',

  // Die Saiten
  'Mean height of the strings above the crown of the board at the nut.':
    'Mittlere Höhe der Saiten über dem Scheitel des Griffbretts am Sattel.',
  'Mean height above the crown of the board at fret 12: action plus fret height.':
    'Mittlere Höhe über dem Scheitel des Griffbretts am Bund 12: Saitenlage und Bundhöhe zusammen.',
  'Distance of the outer strings from the edge of the board.': 'Abstand der Außensaiten von der Kante des Griffbretts.',

  // Spannstab und Versteifung
  'A one-way rod can only be tightened, which bends all but very thick necks backwards; a two-way rod bends both ways.':
    'Ein einseitiger Spannstab biegt den Hals nur nach hinten, ein zweiseitiger nach beiden Richtungen.',
  'Distance of the first anchor behind the nut.': 'Abstand der ersten Verankerung hinter dem Sattel.',
  'Distance of the second anchor from the nut.': 'Abstand der zweiten Verankerung vom Sattel.',
  'Width of the rod channel. 0 is no channel. It tapers with the neck.':
    'Breite der Nut für den Spannstab. 0 heißt keine Nut. Sie verjüngt sich mit dem Hals.',
  'Depth below the underside of the board; never more than 0.55 of the wood there.':
    'Tiefe unter der Unterseite des Griffbretts; nie mehr als 55 % des Holzes dort.',
  'How far the middle of a one-way rod lies below the line of its anchors.':
    'Wie weit die Mitte eines einseitigen Spannstabs unter der Linie seiner Verankerungen liegt.',
  'Distance between the axes of the two bars of a two-way rod.':
    'Abstand der Achsen der beiden Stäbe eines zweiseitigen Spannstabs.',
  'Thread of the rod’s nut.': 'Gewinde der Mutter des Spannstabs.',
  'Strength class of the threaded bar; it limits the pull.':
    'Festigkeitsklasse des Gewindestabs; sie begrenzt den Zug.',
  'What the hand should never pass on the wrench.': 'Was die Hand am Schlüssel nie überschreiten sollte.',
  'Share of the rod’s range in use. Plus bends the neck backwards; minus, two-way only, forwards.':
    'Wie viel vom Bereich des Spannstabs genutzt ist. Plus biegt den Hals nach hinten; minus, nur bei zweiseitigen, nach vorn.',
  'Carbon bars bonded into the neck beside the rod.': 'Stäbe aus Kohlefaser, neben dem Spannstab in den Hals geklebt.',
  'Width of one stiff bar.': 'Breite eines Versteifungsstabs.',
  'Depth of one stiff bar below the underside of the board.':
    'Tiefe eines Versteifungsstabs unter der Unterseite des Griffbretts.',
  'Modulus of the bar along its fibres.': 'E-Modul des Stabs längs seiner Fasern.',

  // Zeit und Klima
  'Days between pressing the frets and putting the strings on.':
    'Tage zwischen dem Einsetzen der Bünde und dem Besaiten.',
  'Days under string tension at which the neck is called settled.':
    'Tage unter Saitenzug, nach denen der Hals als gesetzt gilt.',
  'Add the movement between a dry winter and a damp summer.':
    'Die Bewegung zwischen einem trockenen Winter und einem feuchten Sommer dazurechnen.',
  'Change of the board’s moisture content since fretting.':
    'Änderung der Holzfeuchte des Griffbretts seit dem Bundieren, in Prozentpunkten.',
  'Change of the neck’s moisture content since fretting.':
    'Änderung der Holzfeuchte des Halses seit dem Bundieren, in Prozentpunkten.',
  'The state of the neck in which the crowns are filed to one line. What the file takes is gone from every later state.':
    'In welchem Zustand des Halses die Bundköpfe auf eine Linie gefeilt werden. Was die Feile nimmt, fehlt in jedem späteren Zustand.',
  'Forward bow of the fret tops under string tension that the player wants.':
    'Krümmung der Bundoberkanten nach vorn unter Saitenzug, wie sie zum Spielen gewünscht ist.',

  // Ein Hals, den es schon gibt
  'A refret starts from the bow that the neck already has.':
    'Eine Neubundierung beginnt mit der Biegung, die der Hals schon hat.',
  'Relief of the bare board from fret 1 to the body joint, strings off, as measured. Plus is a forward bow. A list per fret, where you have one, goes before this number.':
    'Halskrümmung des leeren Griffbretts von Bund 1 bis zum Korpusansatz, ohne Saiten, wie gemessen. Plus ist eine Biegung nach vorn. Haben Sie eine Liste für jeden Bund, geht sie dieser Zahl vor.',

  // Annahmen
  'Over about this bite a stud reaches the full embedding strength of the wood.':
    'Etwa so tief eingedrückt, erreicht eine Noppe die volle Lochleibungsfestigkeit des Holzes.',
  'How firmly sawn end grain pushes back on the tang body.':
    'Wie fest gesägtes Hirnholz gegen den Steg des Bundfußes zurückdrückt.',
  'For the seating force and the pull-out force.': 'Für die Einpresskraft und die Ausziehkraft.',
  'How much of the wedge force fades: 0.5 leaves two thirds after three months.':
    'Wie viel von der Keilkraft vergeht: 0,5 lässt nach drei Monaten zwei Drittel übrig.',
  'Measured over predicted back-bow of your own necks; 1 before any measurement.':
    'Gemessene durch vorhergesagte Rückkrümmung Ihrer eigenen Hälse; 1 vor jeder Messung.',

  // Woher
  'assumption; the bench log corrects it': 'Annahme; das Messbuch berichtigt sie',
  'your own measurement': 'Ihre eigene Messung',
  'your bench log': 'Ihr Messbuch',
  'the profile equation in mechanics/MODEL.md': 'die Gleichung des Profils in mechanics/MODEL.md',
  'ASTM E1876 for the bar in bending, beam formula for the weight':
    'ASTM E1876 für den schwingenden Stab, Balkenformel für das Gewicht',
  'Wood Handbook FPL-GTR-190 and -282, AH 607, Tropix: see woods.ts':
    'Wood Handbook FPL-GTR-190 und -282, AH 607, Tropix: siehe woods.ts',
  'Wood Handbook FPL-GTR-190 Table 5-1': 'Wood Handbook FPL-GTR-190, Tabelle 5-1',
  'Wood Handbook ch. 4': 'Wood Handbook, Kapitel 4',
  'Wood Handbook, from memory; assumption; the bench log corrects it':
    'Wood Handbook, aus dem Gedächtnis; Annahme, die das Messbuch berichtigt',
  'alloy data, see metals.ts': 'Daten der Legierungen, siehe metals.ts',
  'ISO 898-1': 'ISO 898-1',
  'McKenzie & Karpovich 1968: 0.65 static, air-dry wood on steel; lower when waxed or moving':
    'McKenzie & Karpovich 1968: 0,65 haftend, lufttrockenes Holz auf Stahl; kleiner, wenn gewachst oder in Bewegung',
};
