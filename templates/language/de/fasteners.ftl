# Sätze von kit/sewing/operations/fasteners.py.

snaps-first = Die flache Hälfte jedes Druckknopfs innen an den Übertritt nähen, nur durch die innere Lage: { $places }.
snaps-second = Mit Kreide bestreichen, das Kleidungsstück schließen, damit sich die Stelle abdrückt, und die anderen Hälften annähen: { $under }.
snaps-why = Die Kreide drückt die genaue Stelle ab, sodass die geschlossene Kante flach liegt.

hooks-first = Die Haken innen an den Übertritt nähen, ein wenig von der Kante zurückgesetzt: { $places }.
hooks-second = Das Kleidungsstück schließen, anzeichnen, wohin die Haken reichen, und die Ösen oder Stege annähen: { $under }.
hooks-why = Etwas zurückgesetzt bleibt der Haken unsichtbar, und der Übertritt liegt straff.

eyelets-back = Ein Stückchen Einlage aufbügeln oder aufheften, auf der linken Stoffseite hinter: { $places }.
eyelets-set = An jeder Stelle nach Anleitung des Herstellers eine Öse einschlagen oder ein kleines Knopfloch nähen, nur durch diese eine Lage.
eyelets-why = Nur durch eine Lage: so kommt die Kordel aus dem Tunnel und nicht durch das Kleidungsstück hindurch; das Stückchen Einlage schützt das Loch vor dem Ausreißen.
