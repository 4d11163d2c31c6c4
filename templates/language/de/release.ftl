# Das Blatt, das zuerst gelesen wird, und was die Vorschaubilder zeigen.
release-title = Hier beginnen
release-edition = Ausgabe { $edition }
release-do_read = Das Heft lesen.
release-read = Auf Telefon oder Tablet { $screen } öffnen, auf Papier { $printed } drucken. Darin stehen die Größen, was zu kaufen ist, und jeder Schritt.
release-read_one = { $file } öffnen. Darin stehen die Größen, was zu kaufen ist, und jeder Schritt.
release-do_choose = Die Größe wählen.
release-choose = Maß nehmen und mit der Größentabelle im Heft vergleichen; dort steht auch, was zwischen zwei Größen zu tun ist.
release-do_print = Die Seiten drucken.
release-print = Die Datei der eigenen Größe aus der Liste unten nehmen und ihre erste Seite mit 100 % drucken, nicht an das Papier angepasst. Das Testquadrat messen; stimmt es, den Rest drucken.
release-do_nested = Alle Größen auf einmal:
release-nested = Die letzte Zeile der Liste ist eine Datei mit allen Größen übereinander. Ihre Seite mit der Legende sagt, welche Seiten jede Größe braucht.
release-do_sheets = Im Copyshop:
release-sheets = Eine Datei aus { $folder } mit 100 % auf das Papier drucken lassen, das ihr Name nennt. Vor dem Bezahlen das Testquadrat messen.
release-do_projector = Mit einem Projektor:
release-projector = Eine Datei aus { $folder } nehmen, hell oder dunkel. Ihre beiden Quadrate auf dem Tisch messen, bevor geschnitten wird.
release-do_files = Mit einem anderen Programm:
release-files = In { $folder } liegt der Schnitt in wahrer Größe als SVG und DXF und als reine Daten.
release-do_join = Kleben, zuschneiden, nähen.
release-join = Die Seiten an ihren Zeichen zusammenkleben, die Papierteile ausschneiden, sie auslegen, wie das Heft es zeigt, und nach seinen Schritten weiterarbeiten.
release-what_to_print = Was zu drucken ist
release-size = Größe
release-pages_a4 = Auf A4
release-pages_letter = Auf US Letter
release-file_pages = { $count ->
    [one] { $file }, { $count } Seite
   *[other] { $file }, { $count } Seiten
 }
release-all_sizes = Alle, ineinander
release-mind = Auf die Hände achten
release-caution_blades = Schere, Rollschneider, Stecknadeln und Nadeln verletzen: vom Körper weg schneiden, die Klinge beim Ablegen schließen, die Finger von der Nadel fernhalten und alles außer Reichweite von Kindern aufbewahren.
release-caution_iron = Ein Bügeleisen verbrennt, sein Dampf auch: aufrecht abstellen und beim Weggehen den Stecker ziehen.
release-licence = Was damit erlaubt ist
release-sums = SHA256SUMS enthält eine Prüfsumme jeder Datei, mit der sich eine Kopie prüfen lässt.
release-preview_cover = Die erste Seite des Hefts „{ $title }“.
release-preview_step = Eine Seite des Hefts mit dem Schritt „{ $step }“, seinem Bild und seinem Text.
release-preview_sizes = Die Seite des Hefts mit der Größentabelle.
