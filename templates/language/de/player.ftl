# Der Schritt-Spieler: vor einer Kamera durch die Schritte gehen.

# { $lesson }: der Titel der Lektion.
player-title = Schritte: { $lesson }
player-help = Pfeil rechts und links: weiter und zurück. Leertaste: abspielen oder anhalten. Pos1 und Ende: erster und letzter Schritt. F: ganzes Fenster.
player-step_draft = Konstruktionsschritt { $number }
player-step_sew = Nähschritt { $number }
# Welches Bild eines Schritts es ist.
player-part = Bild { $number } von { $count }
# Wo man in der ganzen Lektion ist, in Bildern gezählt.
player-place = { $number } von { $count }
player-first = Erster Schritt
player-back = Zurück
player-play = Abspielen
player-pause = Anhalten
player-next = Weiter
player-last = Letzter Schritt
player-again = Noch einmal zeichnen
player-speed = Tempo
player-ground = Hintergrund
player-ground_paper = Papier
player-ground_white = Reines Weiß
player-ground_green = Reines Grün
player-ground_blue = Reines Blau
player-show_words = Text
player-full = Ganzes Fenster
player-leave = Ganzes Fenster verlassen
player-silent = Keine Antwort. Einen Augenblick warten, oder den Kernel neu starten und alle Zellen ausführen.
player-empty = Diese Lektion hat noch keine Schritte.
player-no_picture = Zu diesem Schritt gehört kein Bild.
# Die Uhr: sie zählt ab dem Start der Kamera und merkt sich, wann jeder Schritt gezeigt wird.
player-clock = Stoppuhr
player-clock_start = Uhr starten
player-clock_stop = Uhr anhalten
player-clock_help = Zusammen mit der Kamera starten. Ein Schritt, der zwei Sekunden lang gezeigt wird, wird notiert.
player-marks = Zeiten im Film
player-marks_none = Noch kein Schritt ist notiert.
player-mark_step = Schritt
player-mark_time = Zeit
# { $step }: der Titel des Schritts. Der Name des Feldes, in dem sich seine Zeit berichtigen lässt.
player-mark_of = Zeit: { $step }
player-chapters = Kapitel
player-copy = Kopieren
player-copied = Kopiert.
# { $file }: ein Dateiname.
player-chapters_in = Gespeichert in { $file }.
player-export = Bilder und Clips
player-export_kind = Art
player-export_mp4 = Film (MP4)
player-export_gif = Bewegtes Bild (GIF)
player-export_png = Bild, durchsichtiger Hintergrund (PNG)
player-export_svg = Zeichnung (SVG)
player-export_which = Schritte
player-export_this = Dieser Schritt
player-export_all = Alle Schritte
player-export_size = Größe
player-export_seconds = Sekunden je Bild
player-export_go = Exportieren
player-export_cancel = Abbrechen
# { $percent }: wie viel fertig ist, 0 bis 100; { $file }: der Name der Datei, die geschrieben wird.
player-export_doing = { $percent } % fertig: { $file }
# { $count }: wie viele Dateien geschrieben wurden; { $folder }: der Ordner, in dem sie liegen.
player-export_done =
    { $count ->
        [one] { $count } Datei liegt im Ordner { $folder }.
       *[other] { $count } Dateien liegen im Ordner { $folder }.
    }
player-export_cancelled =
    { $count ->
        [0] Abgebrochen; keine Datei wurde geschrieben.
        [one] Abgebrochen; { $count } fertige Datei liegt im Ordner { $folder }.
       *[other] Abgebrochen; { $count } fertige Dateien liegen im Ordner { $folder }.
    }
player-film_missing = Der Film kann nicht geschrieben werden: Was MP4-Filme schreibt, ist nicht installiert.
# $command: what to type, never translated.
player-film_install = Stattdessen ein bewegtes Bild (GIF) oder Bilder wählen, oder es installieren: in eine Zelle { $command } tippen, sie ausführen und noch einmal exportieren.
player-clock_brief = Kurz gezeigte Schritte mitzählen
player-clock_brief_help = Ein Schritt zählt sofort, wie kurz er auch gezeigt wird.
player-export_film = Untertitel und Drehliste (VTT, HTML)
player-export_sentence = Satz unter dem Bild
# Die Drehliste eines Films: was gezeigt wird und was dafür bereitliegt. $lesson: der Titel der Lektion.
player-shots = Drehliste: { $lesson }
player-shots_step = Einstellung
player-shots_picture = Bild
player-shots_ready = Bereitlegen
player-shots_pieces = Teile
player-shots_pencil = Bleistift und Radiergummi
player-shots_ruler = langes Lineal
player-shots_set_square = Geodreieck oder Winkel
player-shots_curve = Kurvenlineal
player-shots_compasses = Zirkel
player-shots_lasts = Die Worte dauern etwa { $seconds } s.
player-shots_short = { $shown } s lang gezeigt; die Worte dauern etwa { $seconds } s: Den Schritt länger stehen lassen, sonst sind die Untertitel zu schnell zum Lesen.
player-film_untimed = Kapitel und Untertitel werden geschrieben, sobald ein Schritt eine Zeit hat.
