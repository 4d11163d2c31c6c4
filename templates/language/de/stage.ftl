# Die Bühne (kit/live/stage.py): Regler, Zeichnung und Schritte an einem Ort.
stage-title = Bühne von { $lesson }
stage-views = Ansichten der Lektion
stage-panel = Regler
stage-canvas = Ziehen
stage-player = Schritt für Schritt
stage-large = Groß zeigen
stage-leave = Verlassen
stage-help = 1, 2 und 3 wechseln die Ansicht, Esc verlässt sie.
# Der Schritt, der zu sehen ist. $step: „Konstruktionsschritt 2“; $title: sein Titel.
stage-at = { $step }: { $title }
