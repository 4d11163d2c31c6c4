# Was auf Schnittmusterseiten, Copyshop-Bogen, dem Bogen für den Beamer und in Zeichendateien steht und was beim Erstellen gesagt wird.

# ---- Papiere

paper-name_a4 = A4
paper-name_a3 = A3
paper-name_a0 = A0
paper-name_letter = US Letter
paper-name_tabloid = Tabloid
paper-name_a4_or_letter = A4 oder US Letter
paper-name_roll_36in = Rolle 36 Zoll
paper-name_roll_914mm = Rolle 914 mm

# ---- Seitenköpfe und Unterschriften, durch einen Mittelpunkt getrennt

paper-edition = Ausgabe { $edition }
paper-document = { $title }, { $edition }
paper-document_pages = { $title }, { $edition }, Seiten auf { $paper }
paper-document_projector = { $title }, { $edition }, für den Beamer
# Die Zeile unter dem Titel der ersten Seite.
paper-about_upright =
    { $count ->
        [one] Schnittmusterseiten auf { $paper }, Hochformat · { $count } Seite folgt
       *[other] Schnittmusterseiten auf { $paper }, Hochformat · { $count } Seiten folgen
    }
paper-about_sideways =
    { $count ->
        [one] Schnittmusterseiten auf { $paper }, Querformat · { $count } Seite folgt
       *[other] Schnittmusterseiten auf { $paper }, Querformat · { $count } Seiten folgen
    }
paper-page_of = Seite { $page } von { $pages }
paper-sheet_of = Bogen { $page } von { $pages }
# { $pieces } ist paper-pieces.
paper-on_sheets =
    { $count ->
        [one] { $pieces } auf { $count } Bogen
       *[other] { $pieces } auf { $count } Bogen
    }
paper-on_one_sheet = { $pieces } auf einem Bogen
paper-pieces =
    { $count ->
        [one] { $count } Schnittteil
       *[other] { $count } Schnittteile
    }
paper-place = Reihe { $row }, Spalte { $column }
# In der grauen Fläche einer Seite: der Name der Seite, die dort angeklebt wird, etwa 2B.
paper-glue = hier { $page } ankleben

# ---- die erste Seite

paper-print = Drucken
paper-print_first = Diese Seite zuerst drucken, mit 100 % (tatsächliche Größe), ohne Skalieren und ohne Anpassen an die Seite.
paper-print_first_common = Diese Seite zuerst drucken, mit 100 % (tatsächliche Größe), ohne Skalieren und ohne Anpassen an die Seite. Auf A4 oder US Letter drucken, in der Mitte des Blattes.
paper-print_measure = Vor dem Zuschneiden ein Quadrat nachmessen: das metrische misst { $metric } je Seite, das andere { $inch }.
paper-print_others = Dann die übrigen Seiten mit denselben Einstellungen drucken.
paper-join = Zusammenkleben
paper-join_plan = Die Seiten nach dem Seitenplan auslegen. Reihen haben Zahlen, Spalten Buchstaben.
paper-join_trim = Jede Seite links und oben an der gestrichelten Randlinie (✂) abschneiden. Wo dort keine solche Linie ist, bleibt die Seite, wie sie ist.
paper-join_trim_all = Jede Seite an der gestrichelten Randlinie (✂) abschneiden, an jeder Seite, die eine hat.
paper-join_glue = Die beschnittene Seite auf die graue Fläche der vorigen kleben. Hälften mit derselben Nummer zusammenbringen: der Ring muss sich schließen, und seine Diagonalen müssen sich in der Mitte kreuzen.
paper-join_tape = Die Schnittkanten aneinanderlegen, nicht übereinander, und mit Klebeband verbinden. Hälften mit derselben Nummer zusammenbringen: der Ring muss sich schließen, und seine Diagonalen müssen sich in der Mitte kreuzen.
paper-join_rows = Zuerst die Seiten jeder Reihe verbinden, dann Reihe an Reihe.
paper-cut = Ausschneiden
paper-cut_line = Die Teile auf der dicken durchgezogenen Linie ausschneiden.
paper-cut_blades = Klingen sind scharf. Von den Fingern und vom Körper weg schneiden, den Rollschneider bei jedem Ablegen sichern und nur auf einer Schneidematte verwenden; Klingen und Stecknadeln von Kindern fernhalten. Die Anleitung des Herstellers und die Regeln der Werkstatt gehen vor.
paper-practise = Üben
paper-practise_smaller = Diese Seiten sind zum Üben der Schnittkonstruktion am Tisch. Alles außer der Schrift ist verkleinert: nichts davon passt an einen Körper.
paper-practise_blades = Klingen und Stecknadeln von Kindern fernhalten. Die Regeln des Unterrichtsraums gehen vor.

# ---- der Seitenplan

paper-plan = Seitenplan
paper-plan_pages =
    { $count ->
        [one] { $count } Seite
       *[other] { $count } Seiten
    }
paper-plan_rows =
    { $count ->
        [one] { $count } Reihe
       *[other] { $count } Reihen
    }
paper-plan_columns =
    { $count ->
        [one] { $count } Spalte
       *[other] { $count } Spalten
    }
# { $pages }, { $rows } und { $columns } sind die drei Sätze darüber.
paper-plan_grid = { $pages }, { $rows } × { $columns }
# { $plan } ist paper-plan_grid.
paper-plan_patches = { $plan }, in { $patches } Feldern
paper-plan_single = { $plan }, ohne Zusammenkleben
# { $plan } ist einer der drei Sätze darüber.
paper-plan_blank =
    { $count ->
        [one] { $plan }; { $count } leere Seite ist weggelassen
       *[other] { $plan }; { $count } leere Seiten sind weggelassen
    }

# ---- Testquadrate und Druckerprüfung

paper-square = Testquadrat: vor dem Zuschneiden nachmessen
paper-square_small = Dieses Quadrat misst { $side } und steht für { $stands_for }.
paper-class_half = halbe Größe: nicht zum Zuschneiden
paper-class_quarter = Viertelgröße: nicht zum Zuschneiden
paper-gauge_short = Druckerprüfung, kurze Seite des Papiers
paper-gauge_long = Druckerprüfung, lange Seite des Papiers
paper-gauge_sheet_width = Druckerprüfung, quer über den Bogen
paper-gauge_sheet_height = Druckerprüfung, längs über den Bogen
paper-gauge_sheet_short = Druckerprüfung, kurze Seite des Papiers
paper-gauge_sheet_long = Druckerprüfung, lange Seite des Papiers
# Diese beiden folgen auf eine Reihe von Zahlen in Prozent.
paper-gauge_metric = %, bei 100 mm auf dem Lineal
paper-gauge_inch = %, bei 4 Zoll auf dem Lineal
paper-gauge_zero = Die Null des Lineals an die Linie an diesem Ende legen.
paper-gauge_how = Zu klein oder zu groß gedruckt? Misst ein Prüfbalken 97 mm, hat der Drucker mit 97 % gedruckt: zuerst nach einer Skalierung in den Einstellungen suchen. Einen Drucker, der nicht folgt, gleichen eigens erstellte Seiten aus: dort, woher der Schnitt kommt, um Seiten für 97 % bitten, oder für 97 % an der kurzen und 98,5 % an der langen Seite des Papiers, wie die Balken es zeigen.
paper-gauge_corrected = Diese Seiten sind für einen Drucker gemacht, der mit { $scale } % druckt. Dort stimmt das Testquadrat, und die Prüfung zeigt, was ausgeglichen wurde. Auf jedem anderen Drucker werden sie falsch.
paper-gauge_corrected_two = Diese Seiten sind für einen Drucker gemacht, der an der kurzen Seite des Papiers mit { $short } % und an der langen mit { $long } % druckt. Dort stimmt das Testquadrat, und die Prüfung zeigt, was ausgeglichen wurde. Auf jedem anderen Drucker werden sie falsch.

# ---- der Kopf eines Copyshop-Bogens

paper-head_print = Mit 100 % drucken, auf Papier mindestens so breit wie dieser Bogen, ohne Skalieren und ohne Anpassen an die Seite.
paper-head_measure = Vor dem Zuschneiden die Quadrate nachmessen: { $metric } und { $inch } je Seite.
paper-head_blades = Klingen sind scharf: vom Körper weg schneiden, Klingen und Stecknadeln von Kindern fernhalten.

# ---- Seiten mit mehreren Größen

# Eine Folge von Größen, etwa W1 bis W4, und mehrere davon.
paper-sizes_run = { $first } bis { $last }
paper-sizes_alike = { $sizes }, alle gleich
paper-sizes_hint = Auf Seite { $page } steht, wie die eigene Größe zu finden ist und welche Seiten sie braucht.
paper-sizes_find = Die eigene Größe finden
paper-sizes_hold = Diese Seiten enthalten die Größen { $sizes } von „{ $title }“, übereinander gezeichnet.
paper-sizes_count = Die Zeichen zwischen zwei langen Strichen zählen: ein Punkt ist eins, ein kurzer Strich fünf. Gerade Größen sind dicker als ungerade.
paper-sizes_shared = Eine durchgezogene Linie ist gemeinsam: sie gehört zu jeder Größe, deren Linie in sie mündet. Der Name einer Größe steht hier und da in ihrer Linie; die eigene Linie vor dem Ausschneiden farbig nachziehen.
paper-sizes_bunch = Wo Linien für Namen zu dicht beieinander laufen, steht daneben ihre Reihenfolge: ein Strich führt von der zuerst genannten Größe, neben den Worten, über die Linien bis zur letzten.
paper-sizes_layers = In einem Programm, das Ebenen zeigt, die nicht benötigten Größen ausblenden; die Nahtlinie jeder Größe ist eine eigene Ebene, die ausgeblendet ist, bis man sie einschaltet.
paper-sizes_allowances = Nahtzugaben sind enthalten; ihre Breiten stehen an den Kanten.
paper-sizes_print = Nur die Seiten drucken, die für die eigene Größe genannt sind; auf der ersten ist das Testquadrat.
paper-sizes_head_size = Größe
paper-sizes_head_line = Ihre Schneidelinie
paper-sizes_head_pages = Diese Seiten drucken
paper-sizes_plan = Seiten für { $sizes }
paper-sizes_all = alle
paper-sizes_all_line = allen gemeinsam
paper-strips = Ohne Schnittteil zugeschnitten
paper-strip_every = { $strip }: { $length } × { $width } in jeder Größe.
# { $sizes } besteht aus paper-strip_size, durch Semikolon getrennt.
paper-strip_sizes = { $strip }: { $sizes }.
paper-strip_size = { $sizes } { $length } × { $width }
# Namen von Ebenen, wie ein Programm sie auflistet.
paper-layers = Größen
paper-layer_stitch = { $size } Nahtlinie

# ---- der Bogen für den Beamer

paper-projector_about = { $edition } · für den Beamer, 1:1 · Fadenlauf von links nach rechts
paper-projector_measure = auf dem Tisch jede Seite nachmessen

# ---- die SVG-Datei: was Programme als Namen der Gruppen zeigen

paper-svg_about = Eine Benutzereinheit ist ein Millimeter. Eine Gruppe für jede Größe und für das, was Größen gemeinsam haben, darin eine Gruppe für jedes Teil, darin eine für jede Linienart.
paper-svg_size = Größe { $size }
paper-svg_all_sizes = Alle Größen
paper-svg_shared = Gemeinsam für { $sizes }
paper-svg_text = Text
paper-svg_square = Testquadrat, 100 mm
paper-svg_measure = 100 mm: dieses Quadrat nachmessen
paper-svg_cut_line = { $piece }: Schneidelinie
paper-svg_stitch_line = { $piece }: Nahtlinie
paper-svg_fold = { $piece }: Stoffbruch
paper-svg_grainline = { $piece }: Fadenlauf
paper-svg_notches = { $piece }: Passzeichen
paper-svg_marks = { $piece }: Markierungen
paper-svg_names = { $piece }: Namen

# ---- was beim Erstellen der Seiten gesagt wird

paper-doing_pages = Teile werden auf Seiten gelegt
paper-doing_sheet = Teile werden auf einen Bogen gelegt
paper-doing_writing = Seiten werden geschrieben
paper-doing_size = Größe { $size }
paper-doing_projector = Bogen für den Beamer wird erstellt
paper-doing_nested = Seiten auf { $paper } werden erstellt: { $sizes }
# { $amount } ist einer der Sätze darunter.
paper-doing_paper = { $paper }: { $amount }
paper-amount_roll = { $length } davon
paper-amount_pages =
    { $count ->
        [one] { $count } Seite
       *[other] { $count } Seiten
    }
paper-amount_sheets =
    { $count ->
        [one] { $count } Bogen
       *[other] { $count } Bogen
    }
# { $amount } ist paper-amount_pages oder paper-amount_sheets.
paper-amount_blank = { $amount }, { $blank } leere weggelassen

# ---- was sich nicht drucken lässt ----
paper-margins_eat = Innerhalb der Ränder bleiben { $width } x { $height } mm, zu wenig für die Kontrollquadrate und Messstreifen.
paper-margins_eat_do = Größeres Papier oder kleinere Ränder wählen; in jeder Richtung müssen { $least } mm bleiben.
paper-paper_place = Papier { $paper }
paper-no_sizes = Es sind keine Größen gewählt.
paper-no_sizes_do = Einige nennen, etwa --sizes W3,W4, oder all.
paper-size_twice = Die Größe { $size } ist zweimal gewählt.
paper-size_twice_do = Jede Größe einmal nennen.
paper-no_pieces = Dieser Schnitt hat keine Teile, es gibt nichts zu drucken.
paper-no_pieces_do = Die Zeichenschritte ausführen, die die Teile erzeugen.
paper-no_class_scale = Mehrere Größen übereinander sind in verkleinertem Maßstab nicht zu lesen.
paper-no_class_scale_do = Eine Größe in diesem Maßstab drucken oder --scale weglassen.
paper-roll_long = Die Teile brauchen { $length } m ({ $roll }), mehr als eine PDF-Seite fasst.
paper-roll_long_do = Breiteres Papier wählen oder Bogen wie A0; höchstens { $most } m sind möglich.
paper-no_such = Es gibt kein Papier „{ $paper }“.
paper-no_such_do = { $near } Ein eigenes Format wird wie 300x500mm oder 13x19in geschrieben.
paper-size_no_unit = Das Papierformat „{ $paper }“ hat keine Einheit.
paper-size_two_units = Das Papierformat „{ $paper }“ mischt zwei Einheiten.
paper-size_do = { $first }x{ $second }mm schreiben, oder cm oder in.
paper-too_small = Papier von { $paper } ist zu klein: auf die erste Seite müssen ein Kontrollquadrat von 100 mm und ein Messstreifen passen.
paper-too_small_do = Mindestens { $width } x { $height } mm wählen.
paper-too_long = Papier von { $paper } ist länger, als eine PDF-Seite sein kann.
paper-too_long_do = Höchstens { $most } m (200 Zoll) wählen.
paper-margin_overlap = Mit einem Rand von { $margin } mm und einer Überlappung von { $overlap } mm bleibt zu wenig Seite für den Schnitt.
paper-margin_overlap_do = Einen kleineren Rand oder eine kleinere Überlappung angeben.
paper-margin_small = Ein Seitenrand von { $margin } mm ist kleiner, als die meisten Drucker drucken können.
paper-margin_small_do = Mindestens 5 mm angeben.
paper-projector_long = Der Bogen wäre { $size } lang, mehr, als eine PDF-Seite sein kann.
paper-projector_long_do = Unter { $most } m bleiben.
paper-projector_narrow = Die Teile passen nicht auf einen Bogen von { $width } mal { $height }; er muss mindestens { $least } breit sein.
paper-projector_low = Die Teile passen nicht auf einen Bogen von { $width } mal { $height }; er muss mindestens { $least } hoch sein.
paper-projector_small_do = Einen größeren Bogen angeben, oder keinen, dann wird er angepasst.
paper-not_a_sheet = „{ $text }“ ist keine Bogengröße.
paper-not_a_sheet_do = 1500x900mm oder 60x40in schreiben, oder nichts.
paper-no_file_kind = Es gibt keine Datei der Art „{ $kind }“.
paper-not_a_margin = „{ $text }“ ist kein Rand.
paper-not_a_margin_do = 8mm schreiben, oder 6mm,15mm für Seiten sowie oben und unten.
paper-not_a_printer_scale = „{ $text }“ sagt nicht, wie groß der Drucker druckt.
paper-not_a_printer_scale_do = Den Messstreifen auf der ersten Seite ablesen und 97% schreiben, oder 97%,98.5% für die kurze und die lange Papierseite.
paper-not_a_scale = „{ $text }“ ist kein Maßstab für den Unterricht.
paper-scale_do = 1, 1/2 oder 1/4 wählen.
paper-none_named = Es ist kein Papier genannt.
paper-none_named_do = Eines nennen, etwa --paper a4.
paper-printer_off = Ein Drucker, der mit { $share } druckt, ist zu weit vom wahren Maßstab, um das auszugleichen.
paper-printer_off_do = Nach einer Einstellung wie „An Seite anpassen“ suchen und sie abschalten; dann den Messstreifen neu messen.
paper-no_pattern = Die Lektion ist durchgelaufen, hat aber keinen Schnitt ergeben.
paper-no_pattern_do = Die Lehrkraft bitten, die Kopie für den Unterricht neu zu erstellen.
paper-no_name = Diese Datei hat noch keinen Namen.
paper-no_name_do = Sie speichern und die Schaltfläche noch einmal drücken.

# ---- Teile, die nach Maß zugeschnitten werden und kein Schnittteil haben

paper-measures_fold = zur Hälfte, wie es im Stoffbruch liegt; am Bruch: { $edge }
# Die Namen der Kanten stehen bloß: eine Überschrift und wofür sie gilt.
paper-measures_along = In der Länge: { $edges }
paper-measures_top = Zum oberen Ende des Stoffs: { $edge }
paper-measures_allowance = Nahtzugabe, enthalten: { $width } ringsum
paper-measures_allowances = Nahtzugaben, enthalten: { $edges }
paper-measures_edge = { $edge } { $width }
paper-measures_notch =
    { $count ->
        [one] Einfaches Passzeichen ({ $edge }): { $at } von der Schnittkante ({ $start })
       *[other] Einfache Passzeichen ({ $edge }): { $at } von der Schnittkante ({ $start })
    }
paper-measures_double =
    { $count ->
        [one] Doppeltes Passzeichen ({ $edge }), seine Mitte: { $at } von der Schnittkante ({ $start })
       *[other] Doppelte Passzeichen ({ $edge }), ihre Mitten: { $at } von der Schnittkante ({ $start })
    }
paper-measures_line = Linie ({ $mark }): { $at } von der Schnittkante ({ $start }) und parallel dazu
paper-measures_point = Markierung ({ $mark }): { $at } von der Schnittkante ({ $start }), { $up } von der Schnittkante ({ $edge })
paper-measures_slit = Linie ({ $mark }): von { $at } bis { $to }, gemessen von der Schnittkante ({ $start }), { $up } von der Schnittkante ({ $edge })
paper-measures_opening = Öffnung ({ $edge }; { $mark }): von { $at } bis { $to }, gemessen von der Schnittkante ({ $start })
paper-by_measures = Diese Teile brauchen kein Papier: mit Kreide direkt auf den Stoff zeichnen, die Länge im Fadenlauf, Nahtzugaben enthalten. Was darauf zu markieren ist, steht in der Anleitung. { $pieces }
paper-by_measures_sizes = Diese Teile brauchen kein Papier; ihre Maße stehen auf der Seite mit den Größen, was darauf zu markieren ist, in der Anleitung der eigenen Größe: { $pieces }.
paper-by_measures_one = { $piece }: { $size }
paper-by_measures_also = { $about } · ohne Papier: { $pieces }
paper-about_no_pages = Schnitt auf { $paper } · es folgen keine Seiten: alle Teile werden nach Maß zugeschnitten
paper-no_such_piece = In diesem Schnitt gibt es kein Teil „{ $name }“.
paper-needs_paper = Das Teil „{ $piece }“ lässt sich nicht allein nach Maß zuschneiden: Mit Nahtzugaben ist es kein Rechteck im Fadenlauf, oder es hat einen Abnäher, eine Falte oder eine Markierung, deren Platz sich nicht messen lässt.
paper-needs_paper_do = Das Teil auf Papier drucken: seinen Namen aus no_paper streichen.
