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
page-cloth_note = Für Größe { $size } mit den Werten der Lektion.
page-cloth_nearest = Für Größe { $size }, die den eigenen Maßen am nächsten kommt, mit den Werten der Lektion.
page-exercises = Übungen
page-hint = Einen Tipp zeigen
page-no_hint = Keine weiteren Tipps
page-about = Über diese Seite
page-left_out = Diese Seite druckt keinen Schnitt und legt keinen Stoff aus. Mit der Maßdatei kann die Lehrkraft die eigene Größe drucken.
page-notices = Hinweise und Lizenzen

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
