/** Die Arbeitsschritte des Bundierens. */
import type * as english from '../../en/fretwork/steps.ts';

export const STEP_WORDS: typeof english.STEP_WORDS = {
  title: 'Arbeitsschritte der Reihe nach',
  quarter: (index) => `Bünde im Viertel ${index}`,
  bendPastStraight: 'Aufbiegen, über gerade hinaus, auf Radius',
  rest: 'Weiter nach',
  titles: {
    pull: 'Alte Bünde ziehen',
    mend: 'Schlitze ausbessern',
    heat: 'Mit Wärme gerade pressen',
    'level-board': 'Griffbrett abrichten',
    saw: 'Schlitze sägen',
    deepen: 'Schlitze vertiefen, wo nötig',
    clean: 'Schlitze reinigen',
    gauge: 'Schlitzbreite nachmessen',
    chamfer: 'Schlitzkanten fasen',
    bend: 'Bunddraht biegen',
    cut: 'Bünde ablängen',
    nip: 'Bundfußenden abzwicken',
    protect: 'Griffbrett schützen',
    glue: 'Leim',
    lay: 'Bünde einlegen',
    hammer: 'Bünde einschlagen',
    press: 'Bünde einpressen',
    straightedge: 'Richtlineal auflegen nach jedem Viertel',
    clamp: 'Spannen',
    'clamp-board': 'Das bundierte Griffbrett aufleimen',
    trim: 'Enden kürzen und abschrägen',
    rest: 'Hals ruhen lassen',
    level: 'Abrichten, verrunden, polieren',
    string: 'Besaiten',
    'string-and-rod': 'Besaiten und Spannstab einstellen',
    record: 'Aufschreiben',
  },
};

export const STEP_TEXTS: typeof english.STEP_TEXTS = {
  pull: 'In den Aufzeichnungen nachsehen, wie sie eingesetzt wurden: Leim löst sich mit Wärme. Jeden Bund mit einem Lötkolben erwärmen, mit bündig geschliffener Zange an einem Ende ansetzen und in kleinen Bissen längs des Schlitzes heben, ohne zu hebeln. Der Reihe nach aufheben, bis die neuen drin sind.',
  mend: 'Vor allem anderen abgehobene Splitter wieder anleimen. Die Breite jedes Schlitzes messen und die abweichenden als Strecke eingeben: Alte Schlitze sind selten gleich. Auch messen, wie das unbundierte Griffbrett gebogen ist.',
  heat: 'Den unbundierten Hals auf einen geraden Balken spannen, etwas über gerade hinaus, mit einem Bügeleisen oder einer Heizmatte auf dem Griffbrett; in den Zwingen abkühlen lassen. Messen, wenn er herauskommt, und nach einer Woche noch einmal, bevor etwas gehobelt wird: Ein Teil der Krümmung kommt zurück, und wie viel, kann vorher niemand sagen.',
  'level-board': 'Das Griffbrett unter dem Richtlineal völlig gerade abrichten.',
  'level-board-rod':
    'Manche lockern dafür den Spannstab, andere stellen ihn vorher ein: Bei einem bleiben, und die Bünde mit demselben Stand des Spannstabs abrichten.',
  'level-board-radius':
    'Seinen Radius auf ganzer Länge prüfen. Jeder Fehler kommt in den Bundoberkanten wieder. Wo der Plan eine Wölbung verlangt, sie jetzt hineinhobeln.',
  'saw-new':
    'An einem Anschlag sägen, im rechten Winkel zur Mittellinie. Säge und Tiefenanschlag erst an einem Abschnitt desselben Griffbretts probieren.',
  'saw-refret':
    'Nur, wo die Tiefenlehre weniger als die Mindesttiefe zeigt. Eine Säge mit mehr Schränkung als die alte weitet den Schlitz: eine mit gleicher Schnittbreite nehmen.',
  'open-slots':
    'Zum Leimen ist der Schlitz so breit wie der Bundfuß über die Noppen, damit er sich ganz von Hand einschieben lässt. Schmaler gesägte Schlitze, etwa alte oder die eines fertig geschlitzten Griffbretts, werden darauf aufgeweitet.',
  'floor-flat':
    'Der Schnitt ist gerade, also an den Kanten um die Wölbung des Griffbretts flacher: Den Anschlag an der Mittellinie einstellen.',
  'floor-follows': 'Der Grund folgt dem Radius: überall gleich tief unter der Oberfläche.',
  'saw-stopped':
    'Vor dem, was ganz bleibt, mit der Säge anhalten; die Ecken mit einem schmalen Stecheisen oder einem Fräser mit Anschlag fertigmachen.',
  'saw-open': 'Die Schlitze laufen durch beide Kanten hinaus.',
  clean:
    'Mit einem schmalen Haken oder einem alten Sägeblatt jeden Schlitz bis auf den Grund durchziehen: Staub setzt sich in den Ecken fest.',
  'clean-binding': 'In den Enden sitzen Füllstoff und Leim von der Einfassung.',
  'clean-inlays':
    'Wo ein Schlitz Einlagen kreuzt, müssen auch deren Leim und Füllstoff bis auf den Grund heraus: Ein Körnchen davon hebt den Bund und keilt, wo es nicht soll.',
  gauge:
    'In jedem zehnten Schlitz und im Abschnitt eine Fühlerlehre oder ein Stück Bundfuß probieren. Die Schlitzbreite entscheidet, wie weit die Noppen greifen: Das Gemessene eingeben und die Vorhersage noch einmal ansehen.',
  chamfer:
    'Beide Kanten jedes Schlitzes mit einer feinen Dreikantfeile brechen. Dank der Fase liegt der Bundkopf satt auf, und wer den Bund einmal zieht, reißt keine Splitter aus dem Griffbrett. Sie muss unter dem Bundkopf bleiben.',
  'bend-none':
    'Der Bunddraht wird genommen, wie er kommt; an jedem Stück entlangsehen und richten, was nicht gerade ist.',
  bend: 'Vor dem Ablängen biegen, den Bundfuß dabei in einer Nut führen.',
  'bend-open': 'Die Rolle ist enger, als die Bünde werden sollen: Den Bunddraht aufbiegen.',
  'bend-open-straight': 'Die Rolle ist enger, als die Bünde werden sollen: Den Bunddraht aufbiegen, bis er gerade ist.',
  'bend-try':
    'Ein erstes Stück ans Griffbrett halten und nachbessern: Legierungen fallen von Lieferung zu Lieferung anders aus.',
  cut: 'Mit dem Überstand an beiden Enden ablängen und die Stücke der Reihe nach in einen nummerierten Halter legen.',
  nip: 'Den Bundfuß unter beiden Enden abzwicken, damit der Bundkopf über den Lagen der Einfassung liegen kann, die ganz bleiben, und den Grat eben feilen: Was dort vorsteht, hebt das Ende.',
  protect:
    'Das Griffbrett neben jedem Schlitz wachsen oder abkleben, den Schlitz selbst sauber halten. Die Bundfüße entfetten.',
  'clean-up': (_glue, cleanUp) => cleanUp,
  glue: (glue) =>
    `Eine Raupe Leim (${glue}) in den Schlitz laufen lassen, nicht mehr, als ihn füllt, und den Bund einsetzen, ehe der Leim anzieht. Was herausquillt, ist verschwendet und muss wieder ab.`,
  'seat-lay':
    'Jeden Bund von Hand einlegen und mit einer Zulage im Radius des Griffbretts niederhalten: Nichts darf Kraft brauchen.',
  'seat-hammer':
    'Erst die Enden anklopfen, dann von beiden Enden zur Mitte arbeiten, mit leichten Schlägen eines Messinghammers oder eines Hammers mit weicher Bahn; schwere Schläge drücken den Bundkopf breit.',
  'seat-press':
    'Mit einer Zulage im Radius des Griffbretts oder etwas enger pressen, in einem ruhigen Hub, und einige Sekunden halten.',
  'order-spread':
    'Jeder vierte Bund zuerst, dann die in der Mitte dazwischen, dann der Rest: Nach jedem Viertel hat die Biegung die Form, die sie am Ende haben wird.',
  'order-nut-first': 'Vom Sattel aus arbeiten.',
  'order-body-first': 'Vom letzten Bund aus arbeiten.',
  'seat-look': 'Gegen das Licht unter jeden Bundkopf sehen: Kein Spalt darf sich zeigen.',
  'seat-open-time': 'Bund für Bund in der offenen Zeit des Leims arbeiten.',
  straightedge:
    'Die Biegung mit der Tabelle vergleichen. Eilt sie der Vorhersage um mehr als die Spanne voraus, anhalten und tun, was neben der Tabelle steht, bevor der nächste Bund hineingeht.',
  'clamp-board':
    'Leim angeben, das Griffbrett auf seine Stifte setzen und auf ganzer Länge flach aufspannen, zuerst in der Mitte, mit einer Zulage, die die Bundköpfe schont. Es hebt sich zwischen den Zwingen wie an den Enden: mit nicht weniger als dem Druck unten spannen und stehen lassen, bis der Leim durchgehärtet ist.',
  clamp:
    'Unter einer Zulage im Radius des Griffbretts spannen, bis der Leim hält. Nicht besaiten, bevor er durchgehärtet ist.',
  trim: 'Die Enden bündig abschneiden und bis an die Kante feilen, ohne Einfassung oder Halsseite zu berühren, dann mit der Feile im Führungsklotz abschrägen und die Spitzen runden.',
  'trim-fill': 'Füllen, was von den Schlitzen zu sehen ist.',
  rest: 'Frei und eben liegen lassen, im Klima der Werkstatt, und die Biegung vor dem Abrichten noch einmal messen: Das ist die Zahl für das Messprotokoll.',
  level:
    'Die Oberkanten einfärben, abrichten, bis die Feile jeden Bund berührt, verrunden und polieren. Den Vorrat jedes Bundes beachten; aufhören, wo ein Bundkopf unter die Mindesthöhe käme, und die Biegung auf andere Art herausnehmen.',
  string:
    'Die Saiten gleichmäßig hochstimmen und dem Hals einen Tag geben, sich zu setzen, bevor die Halskrümmung beurteilt wird.',
  'string-rod': 'Dann den Spannstab einstellen, je eine Viertelumdrehung.',
  record:
    'Die nachgemessene Schlitzbreite aufschreiben, die Biegung nach jedem Viertel und am Ende, den Leim und wie er sich löst. Wer diese Bünde einmal zieht, braucht es.',
};
