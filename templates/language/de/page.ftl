# Eine Lektion, die im Browser der Lesenden selbst lebt (kit/page). $number und $count zählen Schritte; was hier in
# geschweiften Klammern steht, setzt die Seite selbst ein.

# Während sie sich öffnet.
page-opening = Wird vorbereitet …
page-opening_first = Beim ersten Besuch werden etwa { $size } MB geladen. Danach öffnet sich die Lektion ohne Internet.
page-cannot_run = Dieser Browser kann die Lektion nicht ausführen. Eine neuere Version von Firefox, Chrome, Edge oder Safari kann es.
page-not_loaded = Ein Teil der Lektion konnte nicht geladen werden. Die Verbindung prüfen und die Seite neu laden.
page-needs_scripts = Diese Seite braucht JavaScript.
page-kept = Die Lektion ist auf diesem Gerät gespeichert und öffnet sich ohne Internet.
page-newer = Es gibt eine neuere Ausgabe dieser Lektion.
page-newer_take = Laden
page-edition = Ausgabe { $edition }

# Schritte und Bild.
page-steps = Schritte
page-drafting = Konstruktion
page-sewing = Nähen
page-back = Zurück
page-on = Weiter
page-place = Schritt { $number } von { $count }
page-measures = Maße in diesem Bild
page-no_picture = Dieser Schritt hat kein Bild.
page-larger = Vergrößern
page-smaller = An den Bildschirm anpassen
page-picture = Bild
page-stale = Das Bild zeigt die letzte Schnittzeichnung, die gelungen ist.
page-stopped = Das kam zu keinem Ende und wurde angehalten. Der zuletzt geänderte Wert ist zurückgestellt.

# Was sich einstellen lässt.
page-values = Werte
page-reset = Werte der Lektion
page-less = Weniger: { $name }
page-more = Mehr: { $name }
page-body = Körper
page-size = Größe
page-own_body = Eigene Maße
page-private = Was hier eingegeben wird, bleibt auf diesem Gerät.
page-name = Name
page-all_measures = Alle Maße zeigen
page-use_body = Für diese Maße konstruieren
page-body_used = Die Lektion ist jetzt konstruiert für: { $name }.
page-save_body = Als Datei speichern
page-load_body = Datei laden
page-body_file = meine.toml
page-language = Sprache
page-units = Einheiten
page-cm = cm
page-inch = Zoll
page-language_en = English
page-language_de = Deutsch
page-language_fr = Français
page-language_es = Español

# Was gesagt wird.
page-check = Prüfung
page-checking = Wird geprüft …
page-mend = Was würde helfen?
page-mending = Es wird gesucht, was hilft …
page-finished = Fertigmaße
page-cloth = Stoffbedarf
page-cloth_note = Für Größe { $size } mit den Werten, mit denen diese Seite gemacht wurde.
page-cloth_nearest = Für Größe { $size }, die den eigenen Maßen am nächsten kommt, mit den Werten, mit denen diese Seite gemacht wurde.
page-exercises = Übungen
page-hint = Einen Tipp zeigen
page-no_hint = Keine weiteren Tipps
page-about = Über diese Seite
page-left_out = Diese Seite druckt keinen Schnitt und legt keinen Stoff aus. Mit der Maßdatei kann die Lehrkraft die eigene Größe drucken.
page-notices = Hinweise und Lizenzen

# The reader's own pattern pages, where the page can write them. $size are megabytes, $name is a file.
page-pages = Eigene Schnittseiten
page-pages_how = Schnittseiten für die Größe, die Maße und die Werte, die auf dieser Seite eingestellt sind, als PDF zum Drucken. Beim ersten Mal werden etwa { $size } MB mehr geladen.
page-pages_paper = Papier
page-pages_make = Schnittseiten erstellen
page-pages_stop = Anhalten
page-pages_loading = Was die Schnittseiten schreibt, wird geladen …
page-pages_laying = Die Teile werden ausgelegt und die Seiten geschrieben. Das kann einige Minuten dauern …
page-pages_stopped = Angehalten. Es wurden keine Seiten erstellt.
page-pages_done = Die Schnittseiten sind fertig. Ohne Skalierung drucken und vor dem Zuschneiden das Testquadrat messen.
page-pages_save = { $name } speichern
page-pages_not_here = Was die Schnittseiten schreibt, konnte nicht geladen werden. Die Verbindung prüfen und es noch einmal versuchen oder die Maßdatei der Lehrkraft schicken, die die eigene Größe drucken kann.
page-pages_left_out = Diese Seite legt keinen Stoff aus.

# Was die Lektion nicht annimmt. $name und $value sind, was ihr geschickt wurde.
page-not_asked = Die Seite hat etwas verlangt, das diese Lektion nicht kennt.
page-again_do = Die Seite neu laden.
page-no_units = { $units } sind keine Einheiten.
page-no_values = Die Werte lassen sich nicht lesen.
page-no_body = Der Körper lässt sich nicht lesen.
page-no_number = { $value } ist kein Wert von { $name }.
page-no_slider = Diese Lektion hat keinen Wert namens { $name }.
page-no_measure = Es gibt kein Maß namens { $name }.
page-no_steps = Diese Lektion hat noch keine Schritte.
page-length_do = Eine Länge eingeben, etwa 94 cm oder 37 in.
page-kit_wrong = In der Lektion ist etwas schiefgegangen ({ $kind }: { $what }). Den zuletzt geänderten Wert zurückstellen.

# Das Heft neben der Seite.
page-booklet_link = Das Heft, nach den eigenen Maßen
page-booklet_mine = Dieses Heft nach den eigenen Maßen
page-booklet_how = Einmal die Maße eintragen, und Schritte, Bilder, Längen und Tabellen dieses Heftes werden danach gezeichnet. Was eingetragen wird, bleibt auf dem Gerät.
page-booklet_how_plain = Schritte, Bilder und Längen dieses Heftes folgen den Werten, die auf der Seite der Anleitung eingestellt sind.
page-booklet_open = Eigene Maße verwenden
page-booklet_back = Zurück zum Heft wie gedruckt
page-booklet_page = Die Seite der Anleitung mit ihren Werten
page-booklet_type = Eine Größe wählen oder unten die eigenen Maße eintragen.
page-booklet_drawing = Wird für { $name } gezeichnet: Schritt { $number } von { $count } …
page-booklet_done = Alles in diesem Heft gilt jetzt für { $name }, außer wo es anders dasteht.
page-booklet_done_values = Alles in diesem Heft gilt jetzt für { $name } und die Werte von der Seite der Anleitung, außer wo es anders dasteht.
page-booklet_stands = Das Heft gilt weiter für { $name }.
page-booklet_wrong = Dieser Schnitt besteht die Prüfung nicht. Nicht danach zuschneiden:
page-booklet_no_lays = Zuschneidepläne fehlen hier: Sie galten für Größe { $size }. Vor dem Stoffkauf die eigenen Teile auslegen.
page-booklet_no_sheet = Das Konstruieren von Hand nach Zahlen fehlt hier: Die Zahlen galten für Größe { $size }. Die Schritte oben gelten für die eigenen Maße.
page-booklet_no_pages = Gedruckte Schnittmusterseiten folgen nicht: Sie sind in einer Größe. Die Maße als Datei speichern und dorthin senden, woher diese Anleitung kommt.
page-booklet_drawn_for = Die Bilder dieses Teils sind in Größe { $size } gezeichnet.
page-booklet_differs = Nach den eigenen Maßen wird dieser Schritt anders genäht als in Größe { $size }, die hier steht. Auf der Seite der Anleitung ist er zu sehen.
