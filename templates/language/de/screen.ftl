# Das Heft als Webseite (Telefon, Tablet) und als E-Book: Knöpfe, Fortschritt, Inhalt.

screen-contents = Inhalt
# In der Liste der Stellen eines E-Books: wo der Text beginnt.
screen-start = Anfang des Heftes
screen-access = Jedes Bild hat einen Text, der sagt, was es zeigt. Überschriften, Listen und Tabellen sind als solche ausgezeichnet, und das Inhaltsverzeichnis führt zu jedem Schritt.
screen-close = Schließen
# Der Name des Knopfs auf einem Bild. { $picture } ist, was das Bild zeigt.
screen-enlarge = Vergrößern: { $picture }
screen-enlarge_plain = Bild vergrößern
screen-larger = Größer
screen-smaller = Kleiner
screen-whole = Ganzes Bild
screen-picture = Bild
# Neben dem Kästchen, das nach einem Schritt abgehakt wird. { $step } ist der Titel des Schritts.
screen-done = Erledigt
screen-done_step = Erledigt: { $step }
# Wie viele Schritte abgehakt sind.
screen-progress = { $done } von { $total } Schritten erledigt
screen-again = Alle Haken entfernen
screen-again_ask = Wirklich alle Haken entfernen?
screen-again_yes = Alle entfernen
screen-again_no = Behalten
screen-one = Schritt für Schritt
screen-before = Schritt davor
screen-next = Nächster Schritt
screen-all = Ganzes Heft
screen-forgets = Dieser Browser merkt sich die Haken nicht: sie gelten, bis die Seite geschlossen wird.
screen-fold = Die Bogen für das Heft in tatsächlicher Größe beidseitig drucken, über die kurze Kante gewendet; dann den Stapel in der Mitte falten und im Falz klammern.
