# Was beim Bauen gerade geschieht, im Terminal gesagt.

building-running = { $notebook } wird von vorn ausgeführt
building-cell = Codezelle { $number } („{ $title }“)
building-proving = Schnitt und Nähreihenfolge werden geprüft
building-lays = Die Teile werden auf den Stoff gelegt
building-pages = Die Schnittmusterseiten werden ausgelegt
building-form = Das Heft wird geschrieben ({ $form })
building-screen = Das Heft wird geschrieben (Bildschirm)
building-setting = Das Heft wird gesetzt ({ $form })

# Wird zuerst gesagt, bevor der Code des Notebooks läuft.
building-code = Jetzt läuft der Code der Lektionsdatei.
building-left_out = Im Heft weggelassen: { $what }
building-failed = Prüfung nicht bestanden: Das Heft sagt es auf seinem Umschlag. Nicht nach diesen Seiten zuschneiden.
building-earlier = Von früher, nicht neu geschrieben: { $files }
