# Das Pult mit den Reglern neben der Schnittzeichnung, was unter den Zellen gezeigt wird, und die Formulare für einen
# Körper und zum Benennen von Kanten (kit/live). Alles wird am Bildschirm gelesen.

# Größe, Einheiten und Ansicht.
panel-size = Größe
panel-size_tip = Die Größe, in der die Lektion konstruiert ist
# Eine der wählbaren Größen: { $name } ist der Name einer gemessenen Person.
panel-own_measurements = { $name } (eigene Maße)
panel-units = Einheiten
panel-units_cm = cm
panel-units_inch = Zoll
panel-units_cm_tip = Zentimeter zuerst
panel-units_inch_tip = Zoll zuerst
panel-view = Ansicht
panel-view_tip = Was das Bild zeigt
panel-view_draft = Die Schnittzeichnung
panel-view_step = Schritt { $number }: { $title }
panel-view_flat_front = Flach ausgelegt, vorn
panel-view_flat_back = Flach ausgelegt, hinten
panel-view_worn = Am Körper

# Werte. Eine Vorgabe ist ein benannter Satz von Werten.
panel-preset = Werte
panel-preset_tip = Sätze von Werten zur Auswahl
panel-preset_none = wie an den Reglern
panel-preset_default = Die der Lektion
panel-preset_opened = Wie in der letzten Sitzung
panel-reset = Werte zurücksetzen
panel-reset_tip = Alle Werte auf die der Lektion zurücksetzen
panel-fresh = Neu beginnen
panel-fresh_tip = Was die letzte Sitzung hinterließ, weglegen: alle Werte zurück auf die der Lektion
panel-left_values = Die Werte sind die der letzten Sitzung. „Neu beginnen“ setzt alle auf die der Lektion zurück.
panel-undo = Rückgängig
panel-undo_tip = Die letzte Änderung der Werte zurücknehmen
panel-redo = Wiederholen
panel-redo_tip = Die zuletzt zurückgenommene Änderung wieder ausführen
panel-old_picture = Dieses Bild ist älter: die letzte Konstruktion, die gelang.

# Eine Zeile: der Name eines Parameters und warum es ihn gibt.
panel-row_tip = { $name }: { $why }
panel-follows = Folgt aus: { $measures }.
panel-follows_size = Hat für jede Größe einen Wert.
# Neben einem Wert während einer Anprobe: was er vorher war.
panel-before = vorher { $value }
# Neben einem Wert, zu dem die Prüfung etwas sagt.
panel-marked = { $count ->
    [one] Die Prüfung nennt diesen Wert.
   *[other] Die Prüfung nennt diesen Wert { $count }-mal.
}
# { $level } ist eines der Worte unten, { $what } der ganze Befund.
panel-marked_with = { $level }: { $what }

# Unter dem Bild.
panel-finished = Fertige Maße
# Neben einem fertigen Maß. { $over } ist ein Körpermaß, { $ease } eine Länge in beiden Systemen.
panel-ease = { $ease } Mehrweite gegenüber dem Körpermaß ({ $over })
panel-ease_less = { $ease } weniger als { $over }
panel-proof = Prüfung
panel-checking = Wird geprüft …
panel-passed = Alle Prüfungen bestanden.
panel-level_error = Zu berichtigen
panel-level_warning = Noch einmal ansehen
panel-level_note = Hinweis
panel-finding = { $level }.
# { $names } sind die Parameter, von denen ein Befund abhängt.
panel-depends = Hängt ab von: { $names }.
panel-show_where = Zeigen, wo
panel-estimates = Aus der Größentabelle geschätzt, nicht gemessen ({ $name }): { $measures }.
# { $titles } sind Titel von Schritten in Anführungszeichen, durch Kommas getrennt.
panel-stale = Die Zelle von { $titles } ist nicht mehr im Notebook, der Schritt aber noch im Entwurf. Um ihn herauszunehmen, den Kernel neu starten und alle Zellen ausführen; ist die Zelle neu, das Notebook speichern.
panel-quoted = „{ $title }“

# Stoff und Seiten.
panel-figures = Stoff und Seiten
panel-figures_tip = Ausrechnen, wie viel Stoff und wie viele Seiten es braucht
# { $width } ist eine Stoffbreite wie 140 cm (55 Zoll).
panel-cloth_main = Stoff, { $width } breit
panel-cloth_lining = Futter, { $width } breit
panel-cloth_interfacing = Einlage, { $width } breit
# { $paper } ist ein Papierformat wie A4.
panel-pages_on = Seiten, { $paper }
panel-pages = { $count ->
    [one] { $count } Seite
   *[other] { $count } Seiten
}
# Eine Zahl, die seit der letzten Änderung eines Werts nicht neu ausgerechnet wurde.
panel-figure_was = vorher { $figure }
panel-figure_waiting = …
# Statt einer Länge: ein Teil ist breiter als der Stoff.
panel-figure_narrow = zu schmal
panel-figure_none = noch nicht bekannt

# Nach der Anprobe: was jemand ändert und warum.
panel-tryon = Nach der Anprobe
panel-tryon_tip = Festhalten, was eine Anprobe ändert und warum
panel-tryon_name = Anprobe
# Wie eine neue Anprobe zuerst heißt; { $number } zählt die Anproben der Lektion.
panel-tryon_title = Anprobe { $number }
panel-tryon_begin = Beginnen
panel-tryon_begin_tip = Alle jetzigen Werte merken, dann die Regler bewegen
panel-tryon_going = Anprobe: { $title }. Die Regler so stellen, wie die Anprobe es verlangt.
panel-tryon_nothing = Noch nichts ist geändert.
panel-tryon_piece = Teil
panel-tryon_most = am meisten verschoben
panel-tryon_why = Warum
panel-tryon_why_hint = Was am Körper zu sehen war, in eigenen Worten
panel-tryon_keep = Behalten
panel-tryon_keep_tip = Die Änderungen mit ihrer Begründung festhalten
panel-tryon_cancel = Abbrechen
panel-tryon_cancel_tip = Aufgeben und die Werte zurücksetzen
panel-tryon_kept = Festgehalten
panel-tryon_none = eine Anprobe wählen
panel-tryon_one_dated = { $title }, { $date }
panel-tryon_back = Zurücknehmen
panel-tryon_back_tip = Diese Anprobe entfernen und ihre Werte zurücksetzen
panel-tryon_copy = Damit sie im Notebook steht, dies in eine Zelle kopieren:
# Etwas, das nicht vorgesehen war; { $kind } und { $what } sind technisch.
panel-kit_wrong = Im Baukasten selbst ist etwas schiefgegangen ({ $kind }: { $what }). Die Werte sind noch da. Den zuletzt geänderten Wert zurückstellen und die Zelle noch einmal ausführen.
# { $trouble } ist ein Satz, { $line } die Zeile im Code der Lektion, die ihn verursacht hat.
panel-line_of_cell = { $trouble } (Zeile { $number } der Zelle: { $line })

# Unter einer Zelle.
panel-cell_finished = { $title }:

# Das Formular für einen Körper.
panel-body_mine = Mein Körper
panel-body_name = Name
panel-body_name_tip = Wessen Körper
panel-body_cm_tip = Eine Zahl ohne Einheit ist in cm
panel-body_inch_tip = Eine Zahl ohne Einheit ist in Zoll
panel-body_more = Alle Maße zeigen
panel-body_use = Diesen Körper verwenden
panel-body_use_tip = Die Lektion für diesen Körper konstruieren
panel-body_file = Datei
# Ein Dateiname: Buchstaben ohne Umlaute, mit .toml am Ende.
panel-body_file_mine = meine_masse.toml
panel-body_save = Speichern
panel-body_save_tip = Diesen Körper in der Datei ablegen
panel-body_load = Laden
panel-body_load_tip = Einen Körper aus der Datei lesen
panel-body_empty = nicht gemessen
panel-body_value = { $value }.
panel-body_estimated = { $value }, geschätzt.
panel-body_used = Die Lektion ist jetzt konstruiert für: { $name }.
# { $code } ist eine Zeile Code.
panel-body_saved_code = Gespeichert in { $path }. Um das Heft für diesen Körper zu erstellen, { $code } in eine Zelle unter der Lektion setzen.
panel-body_loaded = { $name } ist aus { $path } gelesen. „Diesen Körper verwenden“ drücken, um dafür zu konstruieren.

# Das Formular, das die Kanten einer abgezeichneten Kontur benennt.
panel-edges_copy_tip = Dies in eine Zelle kopieren
panel-edges_done = Alle Kanten sind benannt. Dies im Notebook aufbewahren:
panel-edges_piece = Teil
panel-edges_piece_tip = Wie das Teil im Code heißt; leer lassen, um diese Kontur wegzulassen
# Eine Kante zwischen zwei nummerierten Ecken; { $length } ist ihre Länge.
panel-edges_edge = { $from } bis { $to } ({ $length })
panel-edges_edge_tip = Die Kante von Ecke { $from } bis Ecke { $to }
panel-edges_waist = Taillenlinie
panel-edges_waist_tip = Wo die Taillenlinie liegt
panel-edges_waist_hint = Ecke, Kante oder 20 cm über dem tiefsten Punkt
panel-edges_outline = Kontur { $name }

panel-fit = Passform ändern
panel-fit_tip = Den Schnitt für eine Figur ändern: verlängern, volle Brust, Hohlkreuz und andere
panel-fit_choose = Änderung wählen
panel-fit_add = Hinzufügen
panel-fit_by_size = Eine Größe der Tabelle braucht von sich aus keine Änderung. Wähle einen Körper und lies, was er verlangt, oder füge selbst eine Änderung hinzu.
panel-fit_take =
    { $count ->
        [0] Größe { $size } zeichnen
        [one] Größe { $size } mit dieser Änderung zeichnen
       *[other] Größe { $size } mit diesen Änderungen zeichnen
    }
panel-fit_add_tip = Diese Änderung mit eigenem Regler hinzufügen
panel-fit_take_tip = Die für diesen Körper empfohlene Größe wählen und die Änderungen einstellen, die er verlangt
