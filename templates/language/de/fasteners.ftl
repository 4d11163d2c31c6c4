# Sätze von kit/sewing/operations/fasteners.py.

snaps-first = Die flache Hälfte jedes Druckknopfs, die mit der Kugel, { DAT($places, with: "an") } innen an den Übertritt nähen, nur durch die innere Lage.
snaps-second = { $count ->
    [one] Mit Kreide bestreichen, das Kleidungsstück schließen, damit sich die Stelle abdrückt, und die andere Hälfte { DAT($under, with: "an") } annähen.
   *[other] Mit Kreide bestreichen, das Kleidungsstück schließen, damit sich die Stelle abdrückt, und die anderen Hälften { DAT($under, with: "an") } annähen.
}
snaps-why = Die Kreide drückt die genaue Stelle ab, sodass die geschlossene Kante flach liegt.

hooks-first = { $count ->
    [one] Den Haken innen an den Übertritt nähen, ein wenig von der Kante zurückgesetzt, { DAT($places, with: "an") }.
   *[other] Die Haken { DAT($places, with: "an") } innen an den Übertritt nähen, ein wenig von der Kante zurückgesetzt.
}
hooks-second = { $count ->
    [one] Das Kleidungsstück schließen, anzeichnen, wohin der Haken reicht, und den Steg { DAT($under, with: "an") } annähen.
   *[other] Das Kleidungsstück schließen, anzeichnen, wohin die Haken reichen, und die Stege { DAT($under, with: "an") } annähen.
}
hooks-why = Etwas zurückgesetzt bleibt der Haken unsichtbar, und der Übertritt liegt straff.
eyes-first = { $count ->
    [one] Den Haken { DAT($places, with: "an") } innen an die eine Kante nähen, den Bogen { $reach } von der Kante zurückgesetzt, durch beide Ringe und über den Steg unter dem Bogen.
   *[other] Die Haken { DAT($places, with: "an") } innen an die eine Kante nähen, den Bogen { $reach } von der Kante zurückgesetzt, durch beide Ringe und über den Steg unter dem Bogen.
}
eyes-second = { $count ->
    [one] Die Öse { DAT($under, with: "an") } innen an die andere Kante nähen, die Schlinge { $reach } darüber hinaus, durch beide Ringe und zu beiden Seiten über den Draht an der Kante.
   *[other] Die Ösen { DAT($under, with: "an") } innen an die andere Kante nähen, die Schlinge { $reach } darüber hinaus, durch beide Ringe und zu beiden Seiten über den Draht an der Kante.
}
eyes-close = { $count ->
    [one] Den Haken einhängen: die Kanten stoßen gerade aneinander, ohne Übertritt und ohne Spalt.
   *[other] Die Haken einhängen: die Kanten stoßen gerade aneinander, ohne Übertritt und ohne Spalt.
}
eyes-why = Um so viel zurückgesetzt, wie die Öse hinausragt, zieht der Haken die beiden Kanten zusammen und bleibt dahinter verborgen.

eyelets-back = { DAT($places, with: "an") } auf der linken Stoffseite ein Stückchen Einlage aufbügeln oder aufheften.
eyelets-set = An jeder Stelle nach Anleitung des Herstellers eine Öse einschlagen oder ein kleines Knopfloch nähen, nur durch diese eine Lage.
eyelets-why = Nur durch eine Lage: so kommt die Kordel aus dem Tunnel und nicht durch das Kleidungsstück hindurch; das Stückchen Einlage schützt das Loch vor dem Ausreißen.
cord_holes-work = { DAT($places, with: "an") } durch diese eine Lage und ihre Einlage ein kleines Knopfloch nähen, so lang, dass die Kordel leicht hindurchläuft.
cord_holes-cut = Quer vor jedes Ende eine Nadel stecken und den Schlitz mit dem Nahttrenner von der Mitte nach außen aufschneiden.
lacing_eyelets-back = Nachsehen, ob zwischen den Lagen Einlage liegt, wo die Ösen hinkommen; sonst entlang der Kante einen Streifen aufbügeln oder aufheften.
lacing_eyelets-set = { DAT($places, with: "an") } und gegenüber { DAT($opposite, with: "an") } durch alle Lagen ein kleines Loch machen. An jeder Stelle nach Anleitung des Herstellers eine Öse einschlagen, die Schauseite außen.
lacing_eyelets-lace = Beide Kanten zusammenschnüren: jede Öse muss auf gleicher Höhe mit ihrem Gegenüber liegen.
lacing_eyelets-why = Eine Schnürung zieht kräftig an jedem Loch: alle Lagen und die Einlage tragen den Zug gemeinsam.
