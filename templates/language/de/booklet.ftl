# Das Heft: Überschriften, Tabellen und feste Worte.

# { $title } ist der Titel der Lektion.
booklet-title = { $title } – Anleitungsheft
booklet-kind = Anleitungsheft
booklet-cover = Umschlag
booklet-contents = In diesem Heft
booklet-about = Über diesen Entwurf
booklet-begin = Bevor es losgeht
booklet-take_care = Vorsicht
booklet-how_to_read = Wie die Bilder zu lesen sind
booklet-measure = Maßnehmen
booklet-sizes = Die Größe wählen
booklet-finished = Fertige Maße
booklet-cloth_and_notions = Stoff und Kurzwaren
booklet-lays = Zuschneidepläne
booklet-pieces = Schnittteile
booklet-printing = Schnitt drucken und zusammenkleben
booklet-drafting = Schnittkonstruktion
booklet-sewing = Nähen
booklet-to_finish = Zum Schluss
booklet-worksheet = Arbeitsblatt zum Konstruieren von Hand
booklet-fitting = Was die Anproben geändert haben
booklet-variations = Abwandlungen
booklet-terms = Fachwörter in diesem Heft
booklet-index = Wo welches Maß gebraucht wird
booklet-left_out = Weggelassen

# Ein nummerierter Schritt, auf den verwiesen wird. Im Druck kann „, Seite 9“ folgen.
# Im Register.
booklet-see_step = Schritt { $number }
# Im Satz der Lektion: „markiert in Schritt 9“.
booklet-in_step = Schritt { $number }
# Folgt im Druck auf einen Verweis; direkt dahinter steht die Seitenzahl.
booklet-comma_page = , Seite{"\u00A0"}
booklet-stage = { $number } von { $count }
booklet-rest_pictured = alles Weitere wie zuvor gezeigt
booklet-video_at = Video bei { $clock }
booklet-video = Der Film zu diesem Heft: { $address }

## Umschlag

booklet-drafted_for = Konstruiert für
booklet-lengths_in = Längen in
booklet-cm_first = Zentimeter, dann Zoll
booklet-inch_first = Zoll, dann Zentimeter
booklet-cm_only = Zentimeter
booklet-inch_only = Zoll
booklet-edition = Ausgabe
booklet-for_whom = Für wen
booklet-front_view = Vorderseite
booklet-proof_failed = Prüfung nicht bestanden
booklet-do_not_cut = Nach diesem Schnitt nicht zuschneiden. Die Prüfung fand:
booklet-more_findings =
    { $count ->
        [one] Und eines mehr: siehe findings.json.
       *[other] Und { $count } mehr: siehe findings.json.
    }

## Bevor es losgeht

booklet-how_to_use = Einen Schritt ganz lesen, bevor gezeichnet oder geschnitten wird. Zuerst auf Papier konstruieren, ein Probeteil aus billigem Stoff anprobieren und erst dann den guten Stoff zuschneiden.
booklet-how_to_use_pages = Der Schnitt lässt sich Schritt für Schritt selbst konstruieren; oder die Schnittmusterseiten drucken und gleich mit dem Nähen beginnen.
booklet-reading_inks = Dicke Linien in der Akzentfarbe sind in diesem Schritt neu; dünne graue stammen von vorher; blasse gestrichelte fallen weg.
booklet-reading_units = Längen stehen in beiden Maßsystemen. Von Anfang bis Ende bei einem bleiben.
# The system the author thinks in, where the booklet is read in the other.
booklet-reading_own_cm = Der Schnitt ist in Zentimetern entworfen; die Zollangaben sind umgerechnet und auf die Striche eines Lineals gerundet.
booklet-reading_own_inch = Der Schnitt ist in Zoll entworfen; die Zentimeter sind umgerechnet und auf die Striche eines Lineals gerundet.
booklet-reading_cloths = Stoff ist mit einer Tönung und einem Muster gezeichnet; die Zeichenerklärung steht unten.
booklet-reading_ticks = Erledigte Schritte abhaken; dieses Gerät merkt es sich.

## Maßnehmen

booklet-measure_intro = Über Unterwäsche oder einem dünnen Oberteil messen. Wie gewohnt stehen, ruhig atmen und möglichst jemand anderen das Maßband halten lassen: am Körper anliegend, nie straff.
booklet-measure_waist = Zuerst ein schmales Band um die Taille binden; mehrere Maße beginnen oder enden dort.

## Größen und Maße

booklet-size = Größe
booklet-body_measurements = Körpermaße
booklet-cm_above = Oben Zentimeter, unten Zoll.
booklet-inch_above = Oben Zoll, unten Zentimeter.
booklet-cm_alone = Alle Angaben in Zentimeter.
booklet-inch_alone = Alle Angaben in Zoll.
# { $order } ist einer der beiden Sätze davor.
booklet-drafted_for_size = { $order } Dieses Heft ist für Größe { $size } konstruiert.
booklet-drafted_for_body = { $order } Dieses Heft ist nach den unten genannten Maßen konstruiert: { $name }.
booklet-not_in_sizes = { $order } Mit diesen Werten lässt es sich in diesen Größen nicht konstruieren: { $sizes }.
booklet-estimated = geschätzt
booklet-measured = gemessen
booklet-estimated_value = { $value }, geschätzt
booklet-estimated_note = Aus der nächsten Größe geschätzt, nicht gemessen: { $names }. Vor dem Zuschneiden nachmessen.
booklet-not_in_figure = (In der Figur nicht eingezeichnet.)
booklet-measurements_of = Maße: { $name }
booklet-measurement = Maß
booklet-value = Wert
booklet-garment = Kleidungsstück
booklet-finished_value = Fertig
booklet-back_view = Rückseite
booklet-on_body = Am Körper, für den es konstruiert ist ({ $body }), vorn und hinten im selben Maßstab, mit den Fertigmaßen.
booklet-on_body_to_scale = Im Gebrauch, vorn und hinten im selben Maßstab.
booklet-laid_flat_front = Flach ausgelegt, von vorn gesehen. Ein Maß rundherum läuft auf der anderen Seite weiter.
booklet-laid_flat_back = Flach ausgelegt, von hinten gesehen. Ein Maß rundherum läuft auf der anderen Seite weiter.
booklet-ease = Weitenzugabe
booklet-goes_over = Über
booklet-body_value = Körper
booklet-ease_value = Weitenzugabe
booklet-fit_close = Es soll körpernah sitzen.
booklet-fit_easy = Es soll bequem sitzen.
booklet-fit_loose = Es soll weit sitzen.
booklet-ease_note = Die Weitenzugabe sagt, wie viel weiter das Kleidungsstück ist als der Körper darunter: Bewegungsfreiheit und die Form des Entwurfs.
booklet-choices = Gewählte Werte dieses Schnitts
booklet-choice = Maß
booklet-here = Hier
booklet-range = Bereich
booklet-why = Warum
booklet-from_to = { $least } bis { $most }

## Stoff, Kurzwaren, Zuschnitt

booklet-fibre = Faser
booklet-weight = Gewicht
booklet-drape = Fall
booklet-avoid = Besser nicht
booklet-prewash = Vor dem Zuschneiden
booklet-cloth = Stoff
booklet-width = Breite
booklet-to_buy = Einkaufslänge
booklet-laid = Aufgelegt
booklet-laid_lengthwise = der Länge nach gefaltet
booklet-laid_flat = offen ausgebreitet
booklet-laid_part = teilweise gefaltet
booklet-laid_either = { $folded } oder { $flat }
booklet-cloth_to_buy = Stoffbedarf
booklet-cloth_main = Oberstoff
booklet-cloth_lining = Futter
booklet-cloth_interfacing = Einlage
booklet-too_narrow = zu schmal
booklet-lengths_by_size = Stoffbedarf für jede Größe
# Eine Zeile dieser Tabelle: welcher Stoff, wie breit.
booklet-cloth_wide = { $cloth }, { $width }
booklet-notions = Kurzwaren
booklet-tools = Werkzeug
booklet-lays_intro = Die Teile mit Kreide umfahren und vor dem Zuschneiden jeden Fadenlauf an der Webkante prüfen. Was aus dem offenen Stoff geschnitten wird, kommt zuletzt.

## Schnittteile

booklet-no = Nr.
booklet-piece = Teil
booklet-to_cut = Zuschneiden
booklet-cut_list = Zuschnittliste
booklet-strip = Streifen
booklet-strips = Streifen
booklet-strip_size = Länge × Breite beim Zuschneiden
# Wie viele Lagen aus welchem Stoff: { $cloth } ist eines dieser drei.
booklet-of_main = Oberstoff
booklet-of_lining = Futter
booklet-of_interfacing = Einlage
booklet-cut = { $count }× aus { $cloth }
booklet-cut_interfaced = { $count }× aus { $cloth } und { $interfacing }× aus Einlage
booklet-cut_fold = { $count }× aus { $cloth }, { NOM($edge) } im Stoffbruch
booklet-cut_fold_interfaced = { $count }× aus { $cloth } und { $interfacing }× aus Einlage, { NOM($edge) } im Stoffbruch
booklet-cut_pair = { $count }× aus { $cloth }, gegengleich
booklet-cut_pair_interfaced = { $count }× aus { $cloth } und { $interfacing }× aus Einlage, gegengleich
booklet-cut_pairs = { $count }× aus { $cloth }, je zwei gegengleich
booklet-cut_pairs_interfaced = { $count }× aus { $cloth } und { $interfacing }× aus Einlage, je zwei gegengleich
booklet-cut_face_up =
    { $count ->
        [one] 1× aus { $cloth }, einzeln, rechte Stoffseite oben
       *[other] { $count }× aus { $cloth }, jedes einzeln, rechte Stoffseite oben
    }
booklet-cut_face_up_interfaced =
    { $count ->
        [one] 1× aus { $cloth } und { $interfacing }× aus Einlage, einzeln, rechte Stoffseite oben
       *[other] { $count }× aus { $cloth } und { $interfacing }× aus Einlage, jedes einzeln, rechte Stoffseite oben
    }
booklet-cut_continuous = { $count }× aus { $cloth }, nacheinander aus einem endlosen Schrägstreifen
booklet-cut_joined = { $count }× aus { $cloth }, je Streifen { $lengths }
booklet-cut_in_two = { $said }, die Einlage in zwei Längen, die sich { $overlap } überlappen
booklet-length_by_width = { $length } × { $width }
booklet-wide = { $width } breit
booklet-without_paper = Teile ohne Papier
booklet-without_paper_note = Diese Teile sind Rechtecke: mit Kreide direkt auf den Stoff zeichnen, die Länge im Fadenlauf, und prüfen, ob beide Diagonalen gleich lang sind. Nahtzugaben sind enthalten; alle Abstände gelten ab der Schnittkante.
booklet-without_paper_marks = Kanten und Markierungen
booklet-strips_note = Streifen haben kein Schnittteil: im Fadenlauf mit Kreide direkt auf den Stoff zeichnen. Nahtzugaben sind enthalten.
booklet-strips_note_mixed = Streifen haben kein Schnittteil: im jeweils genannten Fadenlauf mit Kreide direkt auf den Stoff zeichnen. Nahtzugaben sind enthalten.
booklet-strip_crosswise = im Querfadenlauf
booklet-strip_bias = im schrägen Fadenlauf
booklet-strip_square = als endloser Streifen aus einem Quadrat von { $square }, mit Nahtzugaben von { $seams } zum Schlauch genäht
booklet-strip_pieced_straight =
    { $joins ->
        [one] der Streifen mit einer geraden Ansatznaht zusammengesetzt, { $seams } Zugabe je Seite
       *[other] der Streifen mit { $joins } geraden Ansatznähten zusammengesetzt, { $seams } Zugabe je Seite
    }
booklet-strip_pieced_straight_each =
    { $joins ->
        [one] jeder Streifen mit einer geraden Ansatznaht zusammengesetzt, { $seams } Zugabe je Seite
       *[other] jeder Streifen mit { $joins } geraden Ansatznähten zusammengesetzt, { $seams } Zugabe je Seite
    }
booklet-strip_pieced_diagonal =
    { $joins ->
        [one] der Streifen mit einer schrägen Ansatznaht zusammengesetzt, { $seams } Zugabe je Seite
       *[other] der Streifen mit { $joins } schrägen Ansatznähten zusammengesetzt, { $seams } Zugabe je Seite
    }
booklet-strip_pieced_diagonal_each =
    { $joins ->
        [one] jeder Streifen mit einer schrägen Ansatznaht zusammengesetzt, { $seams } Zugabe je Seite
       *[other] jeder Streifen mit { $joins } schrägen Ansatznähten zusammengesetzt, { $seams } Zugabe je Seite
    }

## Drucken

booklet-printing_alone = Zuerst nur die erste Schnittmusterseite drucken, mit 100 % oder „Tatsächliche Größe“. „An Seite anpassen“ und „Verkleinern“ ausschalten.
booklet-printing_squares = Die Testquadrate darauf nachmessen: eines hat 100 mm (10 cm) Seitenlänge, das andere 4 Zoll. Stimmt eines nicht, vor dem Weiterdrucken die Skalierung in den Druckereinstellungen suchen.
booklet-printing_rest = Den Rest drucken. Der Plan auf der ersten Seite zeigt, wohin jede Seite gehört: nach Reihe und Spalte.
booklet-printing_join = Jede Seite nur an zwei Seiten an der Randlinie abschneiden, so über die Nachbarseite legen, dass die Klebemarken aufeinandertreffen, und mit Klebeband verbinden.
booklet-printing_check = Vor dem Zuschneiden ein langes Maß auf dem zusammengeklebten Bogen mit diesem Heft vergleichen.

## Arbeitsblatt

# Der Kopf einer Reihe von Strecken auf einer Geraden, die im Punkt { $start } beginnt.
booklet-along = Ab { $start }
# Die Reihe darunter: wie weit die Kurve dort neben der Geraden liegt.
booklet-off = Neben der Geraden

## Anproben

booklet-fitting_intro = Jede Änderung entstand nach einer Anprobe. Die gestrichelte Linie ist die Schnittzeichnung davor, die dicke Linie die jetzige.
booklet-fitting_on = { $title }, { $date }

## Verzeichnis und Rechte

booklet-index_intro = Maße in alphabetischer Reihenfolge, mit den Schritten, die sie brauchen.
booklet-licence = Lizenz
booklet-made_with = Aus einer einzigen Lektionsdatei konstruiert, geprüft und gesetzt. Jedes Bild und jede Zahl folgt der Konstruktion.
booklet-place = { $across }, { $above }
booklet-named_place = { $name }: { $across }, { $above }
booklet-named_place_at_origin = { $name }: in O
booklet-how_to_use_plain = Einen Schritt ganz lesen, bevor gezeichnet oder geschnitten wird. Zuerst auf Papier konstruieren, einmal aus billigem Stoff nähen und erst dann den guten Stoff zuschneiden.

# Verweise zwischen einer Anprobe im Nähen und dem Kapitel der Anproben; im Druck folgt die Seite.
booklet-see_fitting = Was diese Anprobe geändert hat
booklet-tried_on_in = Anprobiert in Schritt { $number }
booklet-stretch = Dehnung
booklet-stretch_across = Den Stoff quer falten, abseits der Kanten, und { $relaxed } des Bruchs entspannt auf die Skala unten legen. Sanft gedehnt muss er { $stretched } erreichen ({ $share }) und wieder zurückgehen.
booklet-stretch_along = Im Fadenlauf dehnt sich der Stoff um { $share }.
booklet-stretch_sewing = Dehnbare Nähte
booklet-stretch_seams = Mit einer Kugelspitznadel nähen, die die Maschen auseinanderschiebt, und mit schmalem Zickzack, Stretchstich oder Overlock; Säume mit Zwillingsnadel oder Zickzack. Eine einfache gerade Naht reißt, wenn sie gedehnt wird. Schultern mit Band sichern und den Stoff beim Nähen nicht ziehen.
booklet-stretch_gauge = Dehnungsskala
booklet-stretch_relaxed = entspannt, { $length }
booklet-stretch_reach = mindestens { $length }
booklet-stretch_here = hier festhalten
booklet-stretch_gauge_note = Sie stimmt in jeder Druckgröße: Es zählt nur das Verhältnis der beiden Längen.
booklet-stretch_gauge_alt = Ein Balken mit drei Marken: an der ersten den Bruch festhalten, bis zur zweiten reicht er entspannt, gedehnt muss er die dritte erreichen.
booklet-needle = Nadel und Stich
booklet-needle_for = Nadelstärke { $needle }, Stichlänge { $stitch } mm. Beides auf zwei Lagen eines Stoffrests erproben.
booklet-fine_seams = So feiner Stoff verträgt schmale Nähte, { $near } bis { $far } neben Kante oder Bruch.

booklet-marking = Zuschneiden und markieren
booklet-allowances_line = Die Nahtzugaben sind in den Schnittteilen enthalten: { $seams }.
booklet-allowances_line_hems = Naht- und Saumzugaben sind in den Schnittteilen enthalten: Nähte { $seams }; Säume { $hems }.
booklet-marking_cut_out = Jedes Teil an der äußeren Linie ausschneiden, die Schere flach auf dem Tisch. Das Papier bleibt darauf, bis alles markiert ist.
booklet-marking_notch = Jedes Passzeichen höchstens { $deep } tief einknipsen, im rechten Winkel zur Kante; ein doppeltes Passzeichen sind zwei Knipse.
booklet-marking_mark = Jede Markierung mit Kreide oder mit einem Faden durch beide Lagen auf die linke Seite übertragen; die Kreide zuerst an einem Stoffrest ausprobieren.
booklet-marking_interface = Die Einlage nach denselben Teilen zuschneiden und zu ihnen legen, damit nichts auf das falsche Teil gebügelt wird.
booklet-marking_table = Was auf welchem Teil markiert wird
booklet-notches = Passzeichen
booklet-marks = Markierungen
booklet-marks_on_one = { $half }: { $marks }
booklet-interfacing = Einlage
booklet-notches_on =
    { $kind ->
        [double] { $edge }: { $count } { $count ->
            [one] doppeltes
           *[other] doppelte
        }
       *[single] { $edge }: { $count }
    }
booklet-is_interfacing = ist Einlage
booklet-interfaced_layers =
    { $count ->
        [one] 1 Lage
       *[other] { $count } Lagen
    }
booklet-time_in_all = Das Nähen dauert insgesamt { $time }, ohne Zuschneiden und ohne Anproben.

booklet-care = Pflege
booklet-care_wash = Waschen und bügeln wie den Stoff vor dem Zuschneiden; was Laden oder Stoffballen zum Stoff angeben, geht vor.
booklet-care_shut = Verschlüsse vor dem Waschen schließen.
booklet-care_fused = Wo Bügeleinlage sitzt, durch ein Tuch bügeln und nicht heißer, als die Einlage verträgt.
booklet-care_stretch = Liegend trocknen, damit das eigene Gewicht nichts in die Länge zieht.
booklet-choose_bust_girth = Die Größe nach dem Brustumfang bestimmen: Er lässt sich nach dem Zuschneiden am schwersten ändern.
booklet-choose_waist_girth = Die Größe nach dem Taillenumfang bestimmen.
booklet-choose_hip_girth = Die Größe nach dem Hüftumfang bestimmen.
booklet-choose_between = Zwischen zwei Größen die Fertigmaße unter der Maßtabelle vergleichen: Die größere lässt mehr Weite, die kleinere liegt enger an.
booklet-live_at = Diese Anleitung gibt es auch als Seite im Netz. Dort folgen Schritte, Bilder und Längen den eigenen Maßen; diese bleiben auf dem Gerät.
booklet-live_at_sized = Diese Anleitung gibt es auch als Seite im Netz. Dort folgen Schritte, Bilder und Längen den eigenen Maßen; diese bleiben auf dem Gerät. Sie öffnet sich in Größe { $size }, in der dieses Heft gezeichnet ist.
booklet-live_at_plain = Diese Anleitung gibt es auch als Seite im Netz. Dort folgen Bilder und Längen den Werten, die man wählt.
booklet-live_code = Code, der zu { $address } führt
booklet-choose_over_both = Fällt der Taillen- oder der Hüftumfang in eine andere Größe, bis zum unteren Armloch bei der Größe des Brustumfangs bleiben und die Seitennaht zwischen den beiden Linien in einem sanften Bogen in die andere überführen. An allen Teilen, die dort zusammentreffen, ebenso.
booklet-choose_over_waist_girth = Fällt der Taillenumfang in eine andere Größe, bis zum unteren Armloch bei der Größe des Brustumfangs bleiben und die Seitennaht zwischen den beiden Linien in einem sanften Bogen in die andere überführen. An allen Teilen, die dort zusammentreffen, ebenso.
booklet-choose_over_hip_girth = Fällt der Hüftumfang in eine andere Größe, die Seitennaht zwischen den beiden Linien in einem sanften Bogen in diese überführen. An allen Teilen, die dort zusammentreffen, ebenso.

booklet-fit_changes = Passform auf dem Papier ändern
booklet-fit_changes_intro = Erst das Papier ändern, dann den Stoff zuschneiden. Wie viel, sagt der Unterschied zwischen dem eigenen Maß und dem der gewählten Größe. Belege, Futter und Einlagen ebenso ändern wie das Teil, an dem sie liegen; dann Kanten, die zusammengenäht werden, aufeinanderlegen und auf gleiche Länge prüfen. Zuerst ein Probeteil nähen. Gestrichelt: wie es war; kräftig: wie es wird; der Pfeil zeigt die Stelle, die sich verschiebt.
