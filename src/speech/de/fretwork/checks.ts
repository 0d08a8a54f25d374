/** Die Prüfungen in Worten. */
import type * as english from '../../en/fretwork/checks.ts';

export const CHECK_WORDS: typeof english.CHECK_WORDS = {
  title: 'Prüfungen',
  severities: { stop: 'Halt', warn: 'Achtung', note: 'Hinweis' },
  none: 'Nichts zu beanstanden.',
  more: (count, serious, limits) => {
    if (count === 0) return 'ganz lesen';
    const notes = count - serious - limits;
    const parts = [
      serious > 0 ? `${serious} weitere` : '',
      limits > 0 ? (limits === 1 ? '1 bekannte Grenze' : `${limits} bekannte Grenzen`) : '',
      notes > 0 ? (notes === 1 ? '1 Hinweis' : `${notes} Hinweise`) : '',
    ];
    return parts.filter(Boolean).join(', ');
  },
  limit: 'Bekannte Grenze',
  limits: {
    'limit-stiff-neck': (value, practice) =>
      `Am ersten Tag unter Saiten: hier ${value}, in der Werkstatt unter ${practice}, also noch rückgebogen.`,
    'limit-pressed-settled': (value, practice) =>
      `Besaitet und zur Ruhe gekommen: gepresst hier ${value}, in der Werkstatt weniger als geleimt, also als ${practice}.`,
  },
  bears: (withIt, without) =>
    `Mit eingesetzten Bünden beträgt die Halskrümmung ${withIt}; mit den Noppen allein wären es ${without}.`,
  fewer: 'nur das Wichtigste',
  numbers: (name, value, where, kind, limit) => {
    const found = `${name}: ${value}${where === '' ? '' : ` ${where}`}`;
    return kind === 'least' ? `${found}; nötig sind ${limit}.` : `${found}; höchstens ${limit} dürfen es sein.`;
  },
  names: { restDays: 'Ruhe vor dem Besaiten', wireRadiusPercent: 'Radius des Bunddrahts, von dem des Griffbretts' },
  fret: (fret) => `am Bund ${fret}`,
  frets: (first, last, count) =>
    count === last - first + 1
      ? `an den Bünden ${first} bis ${last}`
      : `an ${count} Bünden zwischen ${first} und ${last}`,
  change: (label) => `ändern: ${label}`,
  lists: { strings: 'Saiten', binding: 'Lagen der Einfassung' },
  source: (source) => `Quelle: ${source}.`,
};

export const CHECK_TEXTS: typeof english.CHECK_TEXTS = {
  'no-bite': {
    title: 'Nichts greift',
    reason: 'Der Schlitz ist so breit wie die Noppen oder breiter: Nichts greift, und der Bund hebt sich wieder.',
    remedy: 'Schmaler sägen, Bunddraht mit breiteren Noppen nehmen oder die Bünde leimen.',
  },
  'weak-bite': {
    title: 'Wenig Eingriff',
    reason: 'Die Noppen reichen kaum in die Wände; die Enden werden sich mit den Jahreszeiten heben.',
    remedy: 'Schmaler sägen oder zusätzlich leimen.',
  },
  'too-tight': {
    title: 'Zu stramm',
    reason:
      'Die Noppen greifen zu tief: Das Griffbrett biegt sich mehr als nötig, bricht an den Schlitzen aus und kann längs der Faser reißen.',
    remedy: 'Breiter sägen oder Bunddraht mit schmaleren Noppen nehmen.',
  },
  'body-wedges': {
    title: 'Auch der Steg des Bundfußes keilt',
    reason: {
      bears:
        'Der Schlitz ist etwas schmaler als der Steg des Bundfußes, darum keilt neben den Noppen auch der Steg. Viele, die pressen, wollen es so: Die Bünde biegen den Hals weiter zurück, und die Saiten ziehen ihn gerade.',
      bow: 'Der Schlitz ist schmaler als der Steg des Bundfußes, darum keilt neben den Noppen auch der Steg, und der Hals bleibt weiter zurückgebogen, als Sie ihn haben wollen.',
      split:
        'Der Schlitz ist schmaler als der Steg des Bundfußes. Der Steg keilt so stark, dass das Holz neben einem Schlitz längs der Faser abscheren kann.',
      force:
        'Der Schlitz ist schmaler als der Steg des Bundfußes, und die Bünde brauchen mehr Kraft, als Ihr Werkzeug gibt: Sie gehen nicht bis auf den Grund, oder die Bundköpfe leiden.',
    },
    remedy: 'Wenn es weniger werden soll: den Schlitz näher an der Breite des Stegs sägen.',
  },
  'loose-glue-fit': {
    title: 'Lockerer Leimsitz',
    reason:
      'Der Spalt neben dem Bundfuß ist so weit, dass der Leim füllen muss; er bleibt weich, oder er schwindet und lässt los.',
    remedy: 'Die Noppen abfeilen, oder Bunddraht mit schmaleren Noppen nehmen und einen schmaleren Schlitz sägen.',
  },
  'soft-glue': {
    title: 'Weicher Leim füllt, ohne zu versteifen',
    reason:
      'Dieser Leim bleibt weich. Er hält den Bund ruhig, aber unter den Saiten gibt der Hals nach wie mit leeren Schlitzen, oder fast so.',
    remedy: 'Nichts, wenn die Krümmung passt. Für einen steiferen Hals einen Leim nehmen, der hart wird.',
  },
  'earlier-grip': {
    title: 'Mit einem früheren Gesetz des Sitzes gerechnet',
    reason:
      'Dieser Hals stammt aus einer früheren Datei. Sie nahm jede Noppe als Klotz, der sofort voll greift; die Schlitzbreite ändert die Biegung dann kaum.',
    remedy:
      'Eine Noppe mit der Lupe ansehen, ihre Form eintragen und den Eindrückweg auf seinen Standardwert zurücksetzen. Damit ändert sich die Biegung.',
  },
  'earlier-woods': {
    title: 'Mit früheren Werten des Holzes gerechnet',
    reason: (woods) =>
      `Dieser Hals kommt aus einer früheren Datei. Die Rohdichte von ${woods} war aus einem anderen Wert hergeleitet, oder der E-Modul enthielt einen Anteil für Schub, den seine Prüfung nicht hat. Er behält diese Zahlen und sagt damit weiter, was er sagte, als Sie danach gearbeitet haben.`,
    remedy:
      'Für eine neue Arbeit „Werte der Hölzer“ auf „wie gedruckt“ stellen. Kräfte und Krümmung ändern sich damit.',
  },
  'earlier-ends': {
    title: 'Die eingefassten Enden sind neu gerechnet',
    reason:
      'Dieser Hals kommt aus einer früheren Datei, die ganz bleibende Außenstreifen als durchgesägt nahm. Damals ergaben seine Bünde etwa ein Zehntel und seine Saiten ein Zwanzigstel zu viel Krümmung. Seine Zahlen sind jetzt kleiner.',
    remedy: 'Nichts zu ändern. „Enden neu gerechnet“ abwählen, wenn Sie es gesehen haben.',
  },
  'slot-too-shallow': {
    title: 'Schlitz zu flach',
    reason: 'Der Bundfuß ist tiefer als der Schlitz: Er stößt auf den Grund, und der Bundkopf bleibt oben.',
    remedy: 'Tiefer sägen oder Bunddraht mit kürzerem Bundfuß nehmen.',
  },
  'slot-shallow-at-edge': {
    title: 'Schlitz an den Kanten zu flach',
    reason:
      'Der Grund des Schlitzes ist gerade und das Griffbrett rund: Zu den Kanten hin ist der Schlitz für den Bundfuß zu flach, und die Enden stehen auf.',
    remedy:
      'In der Mitte tiefer sägen, die Enden vertiefen, damit der Grund dem Radius folgt, oder Bunddraht mit kürzerem Bundfuß nehmen.',
  },
  'little-air': {
    title: 'Wenig Luft unter dem Bundfuß',
    reason: 'Unter dem Bundfuß ist weniger Luft, als Sie wollten: Staub oder Füllstoff im Schlitz hebt den Bund.',
    remedy: 'Etwas tiefer sägen oder die Schlitze bis zum letzten Körnchen reinigen.',
  },
  'slot-deeper-than-needed': {
    title: 'Schlitz tiefer als nötig',
    reason:
      'Die Schlitze sind viel tiefer, als der Bundfuß braucht; Tiefe, die nichts füllt, schwächt nur das Griffbrett.',
    remedy: 'Den Tiefenanschlag höher stellen.',
  },
  'little-board-left': {
    title: 'Wenig Griffbrett unter dem Schlitz',
    reason:
      'Unter dem Schlitz bleibt an der dünnsten Stelle zu wenig vom Griffbrett: Es biegt sich wie ein Scharnier und kann durchreißen.',
    remedy:
      'Weniger tief sägen, ein dickeres Griffbrett nehmen, oder den Grund gerade sägen, wenn die Kante die dünne Stelle ist.',
  },
  'board-edge-thin': {
    title: 'Dünne Kante',
    reason: 'Der Radius macht das Griffbrett an den Kanten dünn.',
    remedy: 'Ein dickeres Griffbrett oder einen flacheren Radius nehmen.',
  },
  'chamfer-too-wide': {
    title: 'Fase zu breit',
    reason:
      'Die Fase ist breiter, als der Bundkopf übersteht: Sie zeigt sich als Rille neben dem Bund und sammelt Schmutz.',
    remedy: 'Die Kanten weniger brechen oder Bunddraht mit breiterem Bundkopf nehmen.',
  },
  'no-chamfer': {
    title: 'Keine Fase',
    reason:
      'Fast ohne Fase kann der Bundkopf auf aufgeworfenen Kanten sitzen, und das Griffbrett bricht aus, wenn die Bünde das nächste Mal gezogen werden.',
    remedy: 'Beide Kanten jedes Schlitzes ein wenig brechen.',
  },
  'slot-shows': {
    title: 'Der Schlitz ist zu sehen',
    reason: 'Das gefeilte Ende reicht nicht bis ans Ende des Schlitzes: Neben jedem Bund zeigt sich ein Loch.',
    remedy: 'Die Enden weniger weit zurückfeilen, mehr Lagen ganz lassen oder die Schlitzenden füllen.',
  },
  'shelf-short': {
    title: 'Kurze Auflage',
    reason:
      'Der Bundkopf liegt kaum auf der ganz gelassenen Einfassung auf; sein Ende lässt sich in den Schlitz drücken.',
    remedy: 'Die Enden weniger weit zurückfeilen oder eine Lage mehr ganz lassen.',
  },
  'tight-nip': {
    title: 'Knapp abgezwickt',
    reason: 'Der abgezwickte Bundfuß hat keine Luft: Trocknet das Griffbrett, drückt er die Einfassung ab.',
    remedy: 'An jedem Ende etwas mehr abzwicken.',
  },
  'binding-harmed': {
    title: 'Einfassung und Leim',
    reason: {
      solvent:
        'Was diesen Leim vom Holz löst, erweicht oder quillt die Einfassung: Sie verschmiert und zieht sich beim Trocknen ab.',
      water: 'Das Wasser im Leim lässt die Einfassung quellen und tagelang wieder schwinden.',
      heat: 'Wärme erweicht diese Einfassung, sie kann schrumpfen oder sich lösen; Zelluloid kann sich entzünden.',
    },
    remedy: 'Die Einfassung schützen und Leim oder Wärme vorher an einem Abschnitt davon ausprobieren.',
  },
  'string-near-end': {
    title: 'Saite nahe am Bundstabende',
    reason: 'Schräge und Rücksprung nehmen so viel vom Bundkopf, dass eine Außensaite von seinem Ende rutschen kann.',
    remedy:
      'Steiler abschrägen (kleinerer Winkel), die Enden weniger weit zurückfeilen oder die Außensaiten weiter nach innen setzen.',
  },
  'studs-overlap': {
    title: 'Noppen überlappen',
    reason: 'Noppen dieser Fläche in diesem Abstand würden mehr als die ganze Seite des Bundfußes bedecken.',
    remedy: 'Noppen und Abstand am Draht noch einmal messen.',
  },
  'bend-too-flat': {
    title: 'Bunddraht zu flach gebogen',
    reason:
      'Der Bunddraht ist flacher als das Griffbrett: Seine Enden stehen auf und federn nach dem Pressen wieder hoch.',
    remedy: 'Enger biegen als das Griffbrett.',
  },
  'bend-too-tight': {
    title: 'Bunddraht zu eng gebogen',
    reason:
      'Der Bunddraht ist viel enger gebogen als das Griffbrett: Wird die Mitte flach gedrückt, treibt es die Enden auseinander und knickt den Bundkopf.',
    remedy: 'Weniger biegen.',
  },
  'little-oversize': {
    title: 'Wenig Überstand',
    reason: 'Über die Kanten steht fast kein Draht: Ein etwas seitlich eingelegter Bund gerät zu kurz.',
    remedy: 'Die Stücke länger schneiden.',
  },
  'short-grain-at-end': {
    title: 'Kurze Fasern am Griffbrettende',
    reason: 'Der Keil des letzten Bundes kann die kurzen Fasern am Ende des Griffbretts abscheren.',
    remedy: 'Das Griffbrett länger lassen, bis die Bünde drin sind, oder den letzten Bund leimen.',
  },
  'clamps-too-weak': {
    title: 'Zwingen zu schwach',
    reason:
      'Das bundierte Griffbrett hebt sich stärker, als Zwinge an Zwinge es niederdrückt: Es wird mit eigener Biegung aufgeleimt.',
    remedy: 'In einer Presse mit Zulagen aufleimen, den Schlitz weiter sägen oder den fertigen Hals bundieren.',
  },
  'strung-too-soon': {
    title: 'Zu früh besaitet',
    reason:
      'Die Saiten kommen auf den Hals, bevor der Leim durchgehärtet ist: Er kriecht, und die Schlitze bleiben offen.',
    remedy: 'Länger warten oder einen Leim nehmen, der schneller härtet.',
  },
  nickel: {
    title: 'Nickel',
    reason: (limit) =>
      `Wer den Hals spielt, ist gegen Nickel empfindlich, und dieser Bunddraht enthält es. Der europäische Grenzwert von ${limit} µg je cm² und Woche gilt für die Abgabe, und wer schon überempfindlich ist, hat auch darunter keine Gewähr.`,
    remedy: 'Eine nickelfreie Legierung nehmen und das Urteil über die Haut den Ärzten überlassen.',
  },
  'nickel-strings': {
    title: 'Nickel in den Saiten',
    reason: (made) =>
      `Wer den Hals spielt, ist gegen Nickel empfindlich, und Saiten auf diesem Hals geben es ab (${made}). Die Finger liegen mehr auf den Saiten als auf den Bünden.`,
    remedy:
      'Mit Bronze umsponnene Saiten oder Nylonsaiten nehmen. Für magnetische Tonabnehmer mit nichtrostendem Stahl umsponnene: Sie geben kaum Nickel ab, trotzdem vorher ärztlichen Rat holen.',
  },
  'string-near-breaking': {
    title: 'Saite nahe am Reißen',
    reason:
      'Eine Saite ist bis nahe an die Festigkeit ihres Drahts gestimmt: Sie reißt an einem Knick oder am Steg und peitscht.',
    remedy:
      'Tiefer stimmen, die Mensur verkürzen oder eine andere Machart nehmen. Eine dünnere blanke Saite steht unter derselben Spannung.',
  },
  'strings-below-frets': {
    title: 'Saiten am Sattel tiefer als die Bünde',
    reason: 'Der Sattel hält die Saiten tiefer, als die Bünde hoch sind: Leere Saiten liegen auf dem ersten Bund auf.',
    remedy: 'Ein höherer Sattel oder eine niedrigere Krone.',
  },
  'strings-too-close': {
    title: 'Saiten am Sattel zu eng',
    reason: 'So viele Saiten auf so schmalem Sattel lassen zwischen sich keinen Platz für eine Fingerkuppe.',
    remedy: 'Ein breiterer Sattel, weniger Saiten oder die äußeren Saiten näher an die Kante.',
  },
  'blank-incomplete': {
    title: 'Rohling nicht fertig gemessen',
    reason: {
      neck: 'Vom Halsrohling fehlen noch Messwerte. Bis alle da sind, gilt die Steifigkeit der Holzart.',
      board: 'Vom Griffbrettrohling fehlen noch Messwerte. Bis alle da sind, gilt die Steifigkeit der Holzart.',
    },
    remedy: 'Eintragen, was fehlt, oder zum Wert der Holzart zurückkehren.',
  },
  'blank-span': {
    title: 'Stützweite länger als der Rohling',
    reason: {
      neck: 'Die Auflager stehen weiter auseinander, als der Halsrohling lang ist, und die Vorhersage baut darauf.',
      board:
        'Die Auflager stehen weiter auseinander, als der Griffbrettrohling lang ist, und die Vorhersage baut darauf.',
    },
    remedy: 'Den Abstand der Auflager noch einmal messen, und die Länge des Rohlings.',
  },
  'blank-sags-far': {
    title: 'Rohling zu weit gebogen',
    reason: {
      neck: 'Der Halsrohling hat sich so weit gesenkt, dass Last und Durchbiegung nicht mehr im gleichen Verhältnis stehen.',
      board:
        'Der Griffbrettrohling hat sich so weit gesenkt, dass Last und Durchbiegung nicht mehr im gleichen Verhältnis stehen.',
    },
    remedy: 'Mit einem leichteren Gewicht noch einmal messen.',
  },
  'blank-unlikely': {
    title: 'Rohling weit von seiner Holzart',
    reason: {
      neck: 'Die Messwerte machen den Halsrohling weit steifer oder weit weicher, als sein Holz es sonst ist.',
      board: 'Die Messwerte machen den Griffbrettrohling weit steifer oder weit weicher, als sein Holz es sonst ist.',
    },
    remedy: 'Noch einmal messen oder prüfen, ob es ein anderes Holz ist.',
  },
  'blank-implausible': {
    title: 'Messwerte eines Rohlings, die nicht stimmen können',
    reason: {
      neck: 'Die Messwerte des Halsrohlings ergeben eine Steifigkeit, die kein Holz hat, und die Vorhersage baut darauf.',
      board:
        'Die Messwerte des Griffbrettrohlings ergeben eine Steifigkeit, die kein Holz hat, und die Vorhersage baut darauf.',
    },
    remedy:
      'Noch einmal messen: Länge, Breite, Dicke, und Masse mit Frequenz oder Last mit Stützweite und Durchbiegung.',
  },
  'back-bow-no-rod': {
    title: 'Rückbiegung, der kein Spannstab beikommt',
    reason: {
      slack:
        'Der Hals bleibt auch mit lockerem Spannstab zu weit hinten. Ein einfach wirkender Halsspannstab biegt ihn nur noch weiter nach hinten: Keine Umdrehung der Mutter nimmt das weg.',
      high: 'Der Hals bleibt zu weit hinten, auch wenn der Spannstab so fest gezogen ist, wie er darf. Er zieht über der Mitte des Holzes dieses Halses und biegt ihn nach vorn, aber nur wenig.',
      pushing: 'Der Hals bleibt zu weit hinten, auch wenn der Spannstab drückt, so stark er darf.',
    },
    remedy:
      'Die Schlitze weiten oder die Bünde leimen, den Unterschied vor dem Bundieren ins Griffbrett hobeln, stärkere Saiten oder einen zweifach wirkenden Halsspannstab nehmen. Ein schon bundierter Hals lässt sich mit Wärme biegen.',
  },
  'forward-bow-no-rod': {
    title: 'Vorbiegung, der kein Spannstab beikommt',
    reason: {
      high: 'Die Saiten ziehen den Hals zu weit nach vorn, und ein einfach wirkender Halsspannstab kann diesen Hals nicht zurückziehen: Er zieht über der Mitte seines Holzes. Wer die Mutter mit Gewalt dreht, bricht den Spannstab.',
      pulling:
        'Die Saiten ziehen den Hals weiter nach vorn, als der Spannstab ihn zurückziehen darf. Wer die Mutter mit Gewalt dreht, bricht den Spannstab.',
    },
    remedy:
      'Ein stärkerer Spannstab, Versteifungsstäbe, ein dickerer oder steiferer Hals, leichtere Saiten oder Bünde, die mehr keilen.',
  },
  'rod-near-limit': {
    title: 'Spannstab nahe an seiner Grenze',
    reason: 'Bünde und Saiten verbrauchen fast den ganzen Bereich des Spannstabs; für die Jahreszeiten bleibt nichts.',
    remedy: 'Schlitzbreite oder Sitz ändern oder den Hals versteifen, damit der Spannstab in seiner Mitte arbeitet.',
  },
  'rod-lies-high': {
    title: 'Der Spannstab liegt hoch',
    reason:
      'Der Spannstab liegt über der Mitte des Holzes dieses Halses: Anziehen biegt den Hals nach vorn, nicht zurück.',
    remedy: 'Eine tiefere Spannstabnut, mehr Krümmung des Stabs oder ein zweifach wirkender Halsspannstab.',
  },
  'rod-without-room': {
    title: 'Kein Platz für den Spannstab',
    reason: 'Die Spannstabnut ist kleiner als das Gewinde des Stabs: Der Stab geht nicht hinein.',
    remedy: 'Breiter oder tiefer fräsen oder einen dünneren Stab nehmen.',
  },
  'channel-too-deep': {
    title: 'Spannstabnut zu tief',
    reason: {
      thin: 'Eine so tiefe Spannstabnut lässt hinter dem Stab wenig Holz: er kann durch den Rücken drücken, und der Hals ist dort schwach.',
      capped:
        'Eine so tiefe Spannstabnut ließe hinter dem Stab zu wenig Holz. Zahlen und Bild nehmen sie nicht tiefer als die Grenze, und flacher, wo der Hals dünner ist.',
    },
    remedy: 'Flacher fräsen oder den Hals dicker machen.',
  },
  'no-rod': {
    title: 'Kein Spannstab zum Einstellen',
    reason: 'Der Hals setzt sich nicht bei der gewünschten Halskrümmung, und kein Spannstab kann ihn dahin bringen.',
    remedy:
      'Schlitzbreite oder Sitz ändern, den Unterschied vor dem Bundieren ins Griffbrett hobeln oder einen Spannstab einbauen.',
  },
  'crown-too-low': {
    title: 'Bundköpfe zu niedrig',
    reason: 'Das Abrichten nähme diese Bundköpfe unter die Höhe, die sich noch gut spielt.',
    remedy:
      'Die Biegung vor dem Abrichten herausnehmen (Schlitzbreite, Sitz, Spannstab, Hobel) oder Bunddraht mit höherem Bundkopf nehmen.',
  },
  'last-levelling': {
    title: 'Das letzte Abrichten',
    reason:
      'Nach dem Abrichten sind diese Bundköpfe zu niedrig, um sie noch einmal abzurichten, wenn sie abgespielt sind.',
    remedy: 'Die Biegung vor dem Abrichten herausnehmen oder Bunddraht mit höherem Bundkopf nehmen.',
  },
  'limit-stiff-neck': {
    title: 'Dieser Hals kann wochenlang rückgebogen bleiben',
    reason:
      'In der Werkstatt überdauert die Rückbiegung dicker, verleimter Hälse aus schwerem Holz das Besaiten und verliert sich erst in Wochen. Hier ziehen die Saiten sie am ersten Tag heraus.',
    remedy:
      'Der Biegung mit eingesetzten Bünden trauen. Unter Saiten liegt dieser Hals wohl weiter zurück als gezeigt: am ersten Tag und nach einigen Wochen nachmessen, erst dann den Spannstab stellen.',
  },
  'limit-pressed-settled': {
    title: 'Gepresst gegen geleimt ist auf Dauer nicht sicher',
    reason:
      'In der Werkstatt bleibt ein Hals mit eingeleimten Bünden der hohlere. Hier wird der gepresste nach einigen Wochen hohler, weil seine Keile nachlassen und seine Schlitze mehr nachgeben.',
    remedy:
      'Beiden Zahlen am Tag des Besaitens trauen. Zwischen Pressen und Leimen nicht nach den späteren Zahlen wählen: Die gepresste ist wohl zu hoch.',
  },
  dust: {
    title: 'Staub',
    reason: (caution) => caution,
    remedy: 'Absaugen, Maske tragen, aussaugen statt ausblasen.',
  },
  'dust-sensitising': {
    title: 'Staub, der überempfindlich macht',
    reason: (caution) => caution,
    remedy: 'Haut bedecken, und beim ersten Zeichen einer Reizung aufhören.',
  },
  glue: {
    title: 'Leim',
    reason: (caution) => caution,
    remedy: 'Das Merkblatt des Leims lesen, den Sie in der Hand haben.',
  },
  heat: {
    title: 'Wärme',
    reason: (caution) => caution,
    remedy: 'Langsam erwärmen, nach einer Woche messen und die Krümmung eingeben, die geblieben ist.',
  },
  'listed-wood': {
    title: 'Geschütztes Holz',
    reason: (caution) => caution,
    remedy:
      'Vor dem Kaufen, Verkaufen oder Versenden nachsehen, was gelistet ist. Holz aus Anhang I, wie Rio-Palisander, darf für den Handel über keine Grenze.',
  },
};
