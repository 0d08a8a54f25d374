/** Prüfungen des Entwurfs, Hinweise zur Sicherheit, und woher sie kommen. */
import type { Sentences } from '../../catalogue.ts';

export const FRETWORK_CHECK_SENTENCES: Sentences = {
  // Lage des Spannstabs
  'The rod lies above the middle of this neck’s wood: tightening it bends the neck forward, not back.':
    'Der Spannstab liegt über der Mitte des Holzes dieses Halses: Anziehen biegt den Hals nach vorn, nicht zurück.',
  'A deeper channel, more curve, or a two-way rod.':
    'Eine tiefere Spannstabnut, mehr Krümmung des Stabs oder ein zweiseitiger Spannstab.',
  'assumption of the program; no source': 'Annahme des Programms; ohne Quelle',
  'So deep a channel would leave too little wood behind the rod. Numbers and picture take it no deeper than the limit, and less where the neck is thinner.':
    'Eine so tiefe Spannstabnut ließe hinter dem Stab zu wenig Holz. Zahlen und Bild nehmen sie nicht tiefer als die Grenze, und flacher, wo der Hals dünner ist.',
  'Rout shallower, or make the neck thicker.': 'Flacher fräsen oder den Hals dicker machen.',

  // Bundfuß im Schlitz
  'The gap beside the tang is so wide that the glue has to be filler; it stays soft, or shrinks and lets go.':
    'Der Spalt neben dem Bundfuß ist so weit, dass der Leim füllen muss; er bleibt weich, oder er schwindet und lässt los.',
  'File the studs down, or take wire with narrower studs and saw a narrower slot.':
    'Die Noppen abfeilen, oder Draht mit schmaleren Noppen nehmen und einen schmaleren Schlitz sägen.',
  'The slot is as wide as the studs or wider: nothing bites, and the fret lifts again.':
    'Der Schlitz ist so breit wie die Noppen oder breiter: Nichts greift, und der Bund hebt sich wieder.',
  'Saw a narrower kerf, take wire with wider studs, or seat as a glue fit.':
    'Schmaler sägen, Draht mit breiteren Noppen nehmen oder die Bünde leimen.',
  'The studs hardly reach into the walls; the ends will lift with the seasons.':
    'Die Noppen reichen kaum in die Wände; die Enden werden sich mit den Jahreszeiten heben.',
  'Saw a narrower kerf, or glue as well.': 'Schmaler sägen oder zusätzlich leimen.',
  'The studs bite too deep: the board bows more than it need, chips at the slots, and can split along the grain.':
    'Die Noppen greifen zu tief: Das Griffbrett biegt sich mehr als nötig, bricht an den Schlitzen aus und kann längs der Faser reißen.',
  'Saw a wider kerf, or take wire with narrower studs.': 'Breiter sägen oder Draht mit schmaleren Noppen nehmen.',
  'The kerf is narrower than the tang’s body, so the whole body wedges. A few hundredths of that are used on purpose to bend a bowed neck back; more ruins a straight one.':
    'Der Schlitz ist schmaler als der Steg des Bundfußes, darum keilt der ganze Steg. Wenige Hundertstel davon nimmt man mit Absicht, um einen krummen Hals zurückzubiegen; mehr verdirbt einen geraden.',
  'Saw the kerf at least as wide as the body of the tang, unless the neck is to be bent back.':
    'Den Schlitz mindestens so breit sägen wie den Steg des Bundfußes, wenn der Hals nicht zurückgebogen werden soll.',

  // Schlitze
  'The tang is deeper than the slot: it stands on the floor and the crown stays up.':
    'Der Bundfuß ist tiefer als der Schlitz: Er steht auf dem Grund, und der Bundkopf bleibt oben.',
  'Saw deeper, or take wire with a shorter tang.': 'Tiefer sägen oder Draht mit kürzerem Bundfuß nehmen.',
  'The floor of the slot is straight and the board is round: towards the edges the slot is too shallow for the tang, and the ends stand up.':
    'Der Grund des Schlitzes ist gerade und das Griffbrett rund: Zu den Kanten hin ist der Schlitz für den Bundfuß zu flach, und die Enden stehen auf.',
  'Saw deeper at the centre, deepen the ends so that the floor follows the radius, or take wire with a shorter tang.':
    'In der Mitte tiefer sägen, die Enden vertiefen, damit der Grund dem Radius folgt, oder Draht mit kürzerem Bundfuß nehmen.',
  'There is less air below the tang than you asked for: dust or filler in the slot lifts the fret.':
    'Unter dem Bundfuß ist weniger Luft, als Sie wollten: Staub oder Füllstoff im Schlitz hebt den Bund.',
  'Saw a little deeper, or clean the slots out to the last grain.':
    'Etwas tiefer sägen oder die Schlitze bis zum letzten Körnchen reinigen.',
  'The slots are much deeper than the tang needs; depth that nothing fills only weakens the board.':
    'Die Schlitze sind viel tiefer, als der Bundfuß braucht; Tiefe, die nichts füllt, schwächt nur das Griffbrett.',
  'Set the depth stop higher.': 'Den Tiefenanschlag höher stellen.',
  'Too little of the board is left below the slot where it is thinnest: it bows like a hinge and can crack through.':
    'Unter dem Schlitz bleibt an der dünnsten Stelle zu wenig vom Griffbrett: Es biegt sich wie ein Scharnier und kann durchreißen.',
  'Saw less deep, take a thicker board, or cut a flat floor where the edge is the thin place.':
    'Weniger tief sägen, ein dickeres Griffbrett nehmen, oder den Grund gerade sägen, wenn die Kante die dünne Stelle ist.',
  'The radius leaves the board thin at its edges.': 'Der Radius macht das Griffbrett an den Kanten dünn.',
  'Take a thicker board or a flatter radius.': 'Ein dickeres Griffbrett oder einen flacheren Radius nehmen.',
  'The chamfer is wider than the crown’s overhang: it shows as a groove beside the fret and collects dirt.':
    'Die Fase ist breiter, als der Bundkopf übersteht: Sie zeigt sich als Rille neben dem Bund und sammelt Schmutz.',
  'Break the edges less, or take wire with a wider crown.':
    'Die Kanten weniger brechen oder Draht mit breiterem Bundkopf nehmen.',
  'With next to no chamfer the crown may sit on raised edges, and the board chips when the frets are next pulled.':
    'Fast ohne Fase kann der Bundkopf auf aufgeworfenen Kanten sitzen, und das Griffbrett bricht aus, wenn die Bünde das nächste Mal gezogen werden.',
  'Break both edges of every slot a little.': 'Beide Kanten jedes Schlitzes ein wenig brechen.',

  // Enden
  'The filed end stops short of the slot’s end: a hole shows beside every fret.':
    'Das gefeilte Ende reicht nicht bis ans Ende des Schlitzes: Neben jedem Bund zeigt sich ein Loch.',
  'File the ends less far in, leave more lines whole, or fill the slot ends.':
    'Die Enden weniger weit zurückfeilen, mehr Lagen ganz lassen oder die Schlitzenden füllen.',
  'The crown hardly rests on the binding left whole; its end can be pressed into the slot.':
    'Der Bundkopf liegt kaum auf der ganz gelassenen Einfassung auf; sein Ende lässt sich in den Schlitz drücken.',
  'File the ends less far in, or leave one more line whole.':
    'Die Enden weniger weit zurückfeilen oder eine Lage mehr ganz lassen.',
  'The nipped tang has no room: when the board dries it pushes the binding off.':
    'Der abgezwickte Bundfuß hat keine Luft: Trocknet das Griffbrett, drückt er die Einfassung ab.',
  'Nip a little more off each end.': 'An jedem Ende etwas mehr abzwicken.',
  'Bevel and inset take so much of the crown that an outer string can slip off its end.':
    'Schräge und Rückstand nehmen so viel vom Bundkopf, dass eine Außensaite von seinem Ende rutschen kann.',
  'Bevel more steeply (a smaller angle), file the ends less far in, or set the outer strings further in.':
    'Steiler schrägen (kleinerer Winkel), die Enden weniger weit zurückfeilen oder die Außensaiten weiter nach innen setzen.',

  // Draht
  'Studs of this area at this pitch would cover more than the whole side of the tang.':
    'Noppen dieser Fläche in diesem Abstand würden mehr als die ganze Seite des Bundfußes bedecken.',
  'Measure stud and pitch on the wire again.': 'Noppen und Abstand am Draht noch einmal messen.',
  'The wire is flatter than the board: its ends stand up and spring up again after pressing.':
    'Der Draht ist flacher als das Griffbrett: Seine Enden stehen auf und federn nach dem Pressen wieder hoch.',
  'Bend it tighter than the board.': 'Enger biegen als das Griffbrett.',
  'The wire is much tighter than the board: flattening its middle spreads the ends and kinks the crown.':
    'Der Draht ist viel enger gebogen als das Griffbrett: Wird die Mitte flach gedrückt, treibt es die Enden auseinander und knickt den Bundkopf.',
  'Bend it less.': 'Weniger biegen.',
  'There is next to no wire over the edges: a fret laid in a little to one side comes out short.':
    'Über die Kanten steht fast kein Draht: Ein etwas seitlich eingelegter Bund gerät zu kurz.',
  'Cut the pieces longer.': 'Die Stücke länger schneiden.',
  'The wedge of the last fret can shear off the short grain at the end of the board.':
    'Der Keil des letzten Bundes kann die kurzen Fasern am Ende des Griffbretts abscheren.',
  'Leave the board longer until the frets are in, or glue the last fret.':
    'Das Griffbrett länger lassen, bis die Bünde drin sind, oder den letzten Bund leimen.',
  'The player is sensitive to nickel and this wire contains it. The European limit of {0} µg per cm² and week is one of release, and keeping it is no promise to someone already sensitised.':
    'Wer den Hals spielt, ist gegen Nickel empfindlich, und dieser Draht enthält es. Der europäische Grenzwert von {0} µg je cm² und Woche gilt für die Abgabe, und wer schon überempfindlich ist, hat auch darunter keine Gewähr.',
  'Take a nickel-free alloy, look at the strings too, and leave the judgement of the skin to a doctor.':
    'Eine nickelfreie Legierung nehmen, auch an die Saiten denken, und das Urteil über die Haut den Ärzten überlassen.',

  // Rohlinge, Saiten, Spannstab, Abrichten
  'The measurements of the neck blank give a stiffness that no wood has, and the prediction is built on it.':
    'Die Messwerte des Halsrohlings ergeben eine Steifigkeit, die kein Holz hat, und die Vorhersage baut darauf.',
  'The measurements of the board blank give a stiffness that no wood has, and the prediction is built on it.':
    'Die Messwerte des Griffbrettrohlings ergeben eine Steifigkeit, die kein Holz hat, und die Vorhersage baut darauf.',
  'Measure again: length, width, thickness, and mass with frequency or load with span and deflection.':
    'Noch einmal messen: Länge, Breite, Dicke, und Masse mit Frequenz oder Last mit Stützweite und Durchbiegung.',
  'A string is tuned close to the strength of its wire: it breaks at a bend or at the bridge, and whips.':
    'Eine Saite ist bis nahe an die Festigkeit ihres Drahts gestimmt: Sie reißt an einem Knick oder am Steg und peitscht.',
  'Tune it lower, shorten the scale, or take another construction. A thinner plain string carries the same stress.':
    'Tiefer stimmen, die Mensur verkürzen oder eine andere Machart nehmen. Eine dünnere blanke Saite steht unter derselben Spannung.',
  'The neck does not settle at the relief that is wanted, and there is no rod to bring it there.':
    'Der Hals setzt sich nicht bei der gewünschten Halskrümmung, und kein Spannstab kann ihn dahin bringen.',
  'Change kerf or way of seating, plane the difference into the board before fretting, or build a rod in.':
    'Schlitzbreite oder Sitz ändern, den Unterschied vor dem Bundieren ins Griffbrett hobeln oder einen Spannstab einbauen.',
  'The neck stays too far back even with the rod slack. A one-way rod only bends it further back: no turn of the nut can remove this.':
    'Der Hals bleibt auch mit lockerem Spannstab zu weit hinten. Ein einseitiger Spannstab biegt ihn nur noch weiter nach hinten: Keine Umdrehung der Mutter nimmt das weg.',
  'The neck stays too far back even with the rod as tight as it may be. It pulls above the middle of this neck’s wood and bends it forward, but only a little.':
    'Der Hals bleibt zu weit hinten, auch wenn der Spannstab so fest gezogen ist, wie er darf. Er zieht über der Mitte des Holzes dieses Halses und biegt ihn nach vorn, aber nur wenig.',
  'The strings pull the neck too far forward, and a one-way rod cannot pull this neck back: it pulls above the middle of its wood. Forcing the nut breaks the rod.':
    'Die Saiten ziehen den Hals zu weit nach vorn, und ein einseitiger Spannstab kann diesen Hals nicht zurückziehen: Er zieht über der Mitte seines Holzes. Wer die Mutter mit Gewalt dreht, bricht den Spannstab.',
  'The neck stays too far back even with the rod pushing as hard as it may.':
    'Der Hals bleibt zu weit hinten, auch wenn der Spannstab drückt, so stark er darf.',
  'Widen the kerf or seat as a glue fit, plane the difference into the board before fretting, take heavier strings, or a two-way rod.':
    'Die Schlitze weiten oder die Bünde leimen, den Unterschied vor dem Bundieren ins Griffbrett hobeln, stärkere Saiten oder einen zweiseitigen Spannstab nehmen.',
  'The strings pull the neck further forward than the rod may pull it back. Forcing the nut breaks the rod.':
    'Die Saiten ziehen den Hals weiter nach vorn, als der Spannstab ihn zurückziehen darf. Wer die Mutter mit Gewalt dreht, bricht den Spannstab.',
  'A stronger rod, stiff bars, a thicker or stiffer neck, lighter strings, or frets that wedge more.':
    'Ein stärkerer Spannstab, Versteifungsstäbe, ein dickerer oder steiferer Hals, leichtere Saiten oder Bünde, die mehr keilen.',
  'Nearly the whole range of the rod is spent on frets and strings; nothing is left for the seasons.':
    'Bünde und Saiten verbrauchen fast den ganzen Bereich des Spannstabs; für die Jahreszeiten bleibt nichts.',
  'Change kerf or way of seating, or stiffen the neck, so that the rod works in its middle.':
    'Schlitzbreite oder Sitz ändern oder den Hals versteifen, damit der Spannstab in seiner Mitte arbeitet.',
  'Levelling would take these crowns below the least height that plays well.':
    'Das Abrichten nähme diese Bundköpfe unter die Höhe, die sich noch gut spielt.',
  'Take the bow out before levelling (kerf, seating, rod, plane), or take wire with a higher crown.':
    'Die Biegung vor dem Abrichten herausnehmen (Schlitzbreite, Sitz, Spannstab, Hobel) oder Draht mit höherem Bundkopf nehmen.',
  'After levelling, these crowns cannot be levelled again.':
    'Nach dem Abrichten lassen sich diese Bundköpfe kein weiteres Mal abrichten.',
  'Take the bow out before levelling, or take wire with a higher crown.':
    'Die Biegung vor dem Abrichten herausnehmen oder Draht mit höherem Bundkopf nehmen.',

  // Leim, Staub, geschütztes Holz
  'The strings go on before the glue has set through: it creeps, and the slots stay open.':
    'Die Saiten kommen auf den Hals, bevor der Leim durchgehärtet ist: Er kriecht, und die Schlitze bleiben offen.',
  'Wait longer, or take a glue that sets sooner.': 'Länger warten oder einen Leim nehmen, der schneller härtet.',
  'Extract, wear a mask, vacuum.': 'Absaugen, Maske tragen, aussaugen statt ausblasen.',
  'Cover up, and stop at the first sign of irritation.':
    'Haut bedecken, und beim ersten Zeichen einer Reizung aufhören.',
  'Read the data sheet of the glue in your hand.': 'Das Merkblatt des Leims lesen, den Sie in der Hand haben.',
  'Check the listing before buying, selling or shipping.':
    'Vor dem Kaufen, Verkaufen oder Versenden nachsehen, was gelistet ist.',

  // Hinweise zur Sicherheit
  'your own wood': 'Ihr eigenes Holz',
  'Saw and file with extraction and a fitted dust mask, and vacuum the slots instead of blowing them out. Hardwood dust can cause cancer of the nose; the European limit at work is 2 mg/m³ of inhalable dust.':
    'Mit Absaugung und gut sitzender Staubmaske sägen und feilen, und die Schlitze aussaugen, nicht ausblasen. Hartholzstaub kann Nasenkrebs verursachen; der europäische Grenzwert am Arbeitsplatz ist 2 mg/m³ einatembarer Staub.',
  'Dust of {0} can sensitise or irritate skin, eyes and airways, sometimes after years without trouble. Cover your arms, wash before eating.':
    'Der Staub des Griffbretts ({0}) kann Haut, Augen und Atemwege reizen oder überempfindlich machen, manchmal erst nach Jahren ohne Beschwerden. Arme bedecken, vor dem Essen waschen.',
  'Clipped wire flies, and its ends are sharp: eye protection, nip into a rag or a box, sweep up before anyone walks there barefoot.':
    'Abgezwickter Draht fliegt, und seine Enden sind scharf: Schutzbrille, in einen Lappen oder eine Schachtel zwicken, aufkehren, bevor dort jemand barfuß geht.',
  'Support the neck right under the caul or the blow, the heel and the headstock free. Keep fingers out from under the press.':
    'Den Hals genau unter der Zulage oder dem Schlag stützen, Halsfuß und Kopfplatte frei. Finger weg unter der Presse.',
  'Alcohol, acetone and naphtha burn: no flame, iron or sparks near, fresh air, rags spread out to dry outside.':
    'Alkohol, Aceton und Waschbenzin brennen: keine Flamme, kein Lötkolben, keine Funken in der Nähe, frische Luft, Lappen draußen ausgebreitet trocknen.',
  'A string can let go: face away while it comes up to pitch the first time, and cut its ends short.':
    'Eine Saite kann reißen: das Gesicht abwenden, wenn sie das erste Mal auf Ton kommt, und ihre Enden kurz abschneiden.',
  'Turn the rod a quarter at a time and wait. A nut that has become hard to turn is at its limit: stop there, a broken rod means a new neck.':
    'Die Mutter des Spannstabs je eine Viertelumdrehung drehen und warten. Geht sie schwer, ist sie an ihrer Grenze: Dort aufhören, ein gebrochener Spannstab heißt ein neuer Hals.',
  '{0}: trade may be regulated under CITES. Check the current listing, and keep proof of where the wood came from with this sheet.':
    '{0}: Der Handel kann nach dem Washingtoner Artenschutzübereinkommen (CITES) geregelt sein. Die geltende Liste prüfen, und den Nachweis, woher das Holz kommt, bei diesem Blatt aufheben.',

  // Woher
  'common practice, no source': 'Werkstattbrauch, ohne Quelle',
  'geometry of this build': 'Geometrie dieses Entwurfs',
  'this prediction': 'diese Vorhersage',
  'this prediction; margin: common practice': 'diese Vorhersage; Abstand: Werkstattbrauch',
  'levelling budget': 'Vorrat zum Abrichten',
  'ASTM A228 least tensile strengths; margin: common practice':
    'kleinste Zugfestigkeiten nach ASTM A228; Abstand: Werkstattbrauch',
  'range of the woods in the table (Wood Handbook, Tropix), with a margin of about a half':
    'Bereich der Hölzer in der Tabelle (Wood Handbook, Tropix), mit einem Spielraum von etwa der Hälfte',
  'REACH Annex XVII entry 27, EN 1811': 'REACH, Anhang XVII, Eintrag 27; EN 1811',
  'IARC group 1; Directive 2004/37/EC as amended by (EU) 2017/2398 (from memory)':
    'IARC-Gruppe 1; Richtlinie 2004/37/EG in der Fassung von (EU) 2017/2398 (aus dem Gedächtnis)',
  'HSE woodworking sheet on toxic woods (from memory)':
    'Merkblatt der britischen HSE über giftige Hölzer (aus dem Gedächtnis)',
  'notes of the wood table; Checklist of CITES Species': 'Anmerkungen der Holztabelle; Checklist of CITES Species',
};
