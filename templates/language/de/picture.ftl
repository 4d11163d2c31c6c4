# Was in Bildern steht (Beschriftungen, Legenden, Figuren) und in ihren Bildbeschreibungen. Beschriftungen kurz halten.

# ---- wie ein Teil zugeschnitten wird

picture-cut =
    { $how ->
        [fold] { $count }× { $cloth }, im Stoffbruch
        [mirrored] { $count }× { $cloth }, gegengleich
        [single] { $count }× { $cloth }, einzeln, rechte Stoffseite oben
       *[plain] { $count }× { $cloth }
    }
picture-cut_interfacing = { $count }× Einlage
picture-cloth_main = Oberstoff
picture-cloth_interfacing = Einlage
picture-cloth_lining = Futter

# ---- was sonst auf einem Teil steht

picture-edition = Ausgabe { $edition }
picture-place_on_fold = an den Stoffbruch legen
picture-one_way = eine Richtung
picture-one_way_top = eine Richtung: Pfeil nach oben
picture-nap_one_way = Stoff mit Strich: Pfeil nach oben
picture-nap_print = Stoff mit Musterrichtung: Rapport beachten
picture-grain_crosswise = Querfadenlauf
picture-grain_bias = schräger Fadenlauf

# ---- Bildbeschreibung eines Teils. { $cut } ist picture-cut

picture-piece = Schnittteil { $number }, { $title }: { $cut }.
picture-piece_edges = Kanten: { $edges }.
picture-edge_on_fold = { $edge } im Stoffbruch
picture-edge_allowance = { $edge } mit { $allowance } Nahtzugabe
picture-piece_marks = Markierungen: { $marks }.
# Eine Markierung, die nur für eine Hälfte gilt; $half ist eine der beiden folgenden Meldungen; so steht sie auf dem Teil.
picture-mark_on_one = { $mark }: { $half }
picture-one_of_pair = nur { SIDE($piece, $side) }
picture-one_half =
    { $side ->
        [left] nur linke Hälfte
       *[right] nur rechte Hälfte
    }
picture-piece_darts = Abnäher: { $darts }.
picture-piece_pleats = Falten und Biesen: { $pleats }.
# Ein Abnäher oder eine Falte und wie viel von der Kante aufgenommen wird.
picture-taking = { $name }, Inhalt { $intake }
picture-laid_crosswise = Im Querfadenlauf aufzulegen.
picture-laid_bias = Im schrägen Fadenlauf aufzulegen.
picture-for_one_way = Für Stoff mit Strich: Pfeil nach oben.
picture-for_print = Für Stoff mit Musterrichtung: Rapport beachten.

# ---- Bilder der Konstruktionsschritte

# Ein abgepaustes Teil auf einem anderen: sein Titel und welche Kante genannt wird.
picture-traced_edge = { $piece }: { $edge }
picture-strip_cut = { $strip }, { $count }× zuschneiden
# Ein Maß mit Namen und Wert neben einer Maßlinie.
picture-measure = { $name } { $value }
# Ein Maß: die Zugabe an einer Kante.
picture-allowance_of = Zugabe ({ $edge })
picture-step_title = { $title }.
picture-step_pieces = Teile: { $pieces }.
picture-step_new = Neu, dick gezeichnet: { $lines }.
picture-step_points = Neue Punkte: { $points }.
picture-step_measures = Maße: { $measures }.
picture-step_marked = Markiert: { $marks }.
picture-step_cut_line = Die Schneidelinie ist eingezeichnet um: { $pieces }.
picture-step_removed = Entfernt, gestrichelt gezeigt: { $lines }.
picture-step_strip = { $strip }: Streifen { $length } × { $width }.
picture-lettered_point = { $letter }, { $point }
picture-enlarged = { $times }-fach vergrößert
picture-step_order = In der Reihenfolge der Hand ({ $piece }): { $moves }.
picture-step_squares = Rechter Winkel: { $places }.
picture-step_tangents = Läuft ohne Ecke ein: { $places }.
picture-step_diagonals = Die Diagonalen sind eingezeichnet und als gleich gekennzeichnet.
picture-step_enlarged_too = Daneben vergrößert: { $measures }.
picture-hand_mark = zu einem Punkt messen
picture-hand_across = im rechten Winkel hinüberziehen
picture-hand_rule = { $line } mit dem Lineal ziehen
picture-hand_curve = { $line } zeichnen
picture-hand_parallel = die Parallele ziehen ({ $line })
picture-hand_trace = abpausen: { $piece }
picture-hand_mirror = spiegeln
picture-sign_on = { $line } zu { $other }
picture-hand_point = { $point } markieren
# Eine Linie oder Markierung und ihr Teil.
picture-line_on = { $line } ({ $piece })
picture-notch_on =
    { $kind ->
        [double] doppeltes Passzeichen an { $edge } ({ $piece })
       *[single] einfaches Passzeichen an { $edge } ({ $piece })
    }
picture-draft = Die Schnittzeichnung von „{ $title }“, { $body }: { $pieces }.
picture-draft_piece = { $piece }, { $width } × { $height }

# ---- Nähbilder

# Der Name einer Lage, wo sie zu sehen ist; die Schrift steht auf der Lage.
picture-layer_face =
    { $face ->
        [right] { $piece }: rechte Stoffseite
        [wrong] { $piece }: linke Stoffseite
       *[interfacing] { $piece }: Einlage
    }
picture-half =
    { $side ->
        [both] { $piece }
       *[other] { SIDE($piece, $side) }
    }
picture-section = Lagen
picture-strip_as_cut = { $strip }, wie zugeschnitten
picture-strip_laid = rechts auf rechts, gesteppt
picture-strip_opened = auseinandergebügelt
picture-strip_folded = gefaltet und gesteppt
picture-strip_sewn = genäht, die linke Seite außen
picture-strip_hemmed = gesäumt
picture-strip_turned = gewendet und gebügelt
picture-turn_over = wenden
picture-floor = Boden
picture-scene_layers = Von unten nach oben: { $layers }.
# Eine Lage: { $piece } ist picture-half, { $lies } picture-lies_...
picture-scene_layer =
    { $face ->
        [right] { $piece }, rechte Stoffseite oben, { $lies }
        [wrong] { $piece }, linke Stoffseite oben, { $lies }
       *[interfacing] { $piece }, Einlage, { $lies }
    }
picture-lies_together = Kante auf Kante daraufgelegt
picture-lies_open = aufgeklappt daneben
picture-lies_flat = flach ausgelegt
picture-scene_rows = Gesteppt: { $runs }.
picture-scene_run =
    { $side ->
        [left] { $edges } { GEN(SIDE($piece, $side)) }
        [right] { $edges } { GEN(SIDE($piece, $side)) }
       *[both] { $edges } ({ $piece })
    }
picture-scene_strip = Streifen: { $strip }.
picture-scene_empty = Nähbild.

# ---- das Kleidungsstück flach ausgelegt

picture-on_body_worn = { $title } am Körper ({ $body }), von vorn und von hinten gesehen.
picture-on_body_hand = { $title }, in der Hand getragen, von vorn und von hinten gesehen.
picture-on_body_shoulder = { $title }, über der Schulter getragen, von vorn und von hinten gesehen.
picture-on_body_head = { $title } auf dem Kopf, von vorn und von hinten gesehen.
picture-flat_front = { $title }, flach ausgelegt, von vorn gesehen: { $pieces }.
picture-flat_back = { $title }, flach ausgelegt, von hinten gesehen: { $pieces }.
picture-flat_finished = Fertige Maße: { $sizes }.
picture-flat_with = Mit { $pieces }.
picture-flat_beside = Daneben: { $pieces }.
picture-flat_left_out = Nicht gezeigt: { $pieces }.

# ---- die Legende

picture-legend_right_side = rechte Stoffseite
picture-legend_wrong_side = linke Stoffseite
picture-legend_interfacing = Einlage
picture-legend_facing = Beleg
picture-legend_strip = Streifen
picture-legend_lining = Futter
picture-legend_cut = Schneidelinie
picture-legend_stitch = Nahtlinie
picture-legend_fold = Bruch
picture-legend_mark = Markierung
picture-legend_lengthen = hier verlängern oder kürzen
picture-legend_placement = hier wird ein Teil aufgelegt
picture-legend_pleat = Falten- oder Biesenlinie
picture-legend_new = neu in diesem Schritt
picture-legend_traced = abgepaust
picture-legend_aid = Hilfslinie der Hand
picture-legend_check = muss gleich sein oder durchlaufen
picture-legend_removed = entfernt
picture-legend_guide = Hilfslinie
picture-legend_row = Naht dieses Schritts
picture-legend_row_sign = Anfang, Richtung und Ende einer Naht
picture-legend_crease = umgelegte Kante
picture-legend_baste = Heftnaht oder Kräuselnaht
picture-legend_hand = Handstiche
picture-legend_old_row = früher genähte Naht
picture-legend_hidden = liegt darunter
picture-legend_press = in diese Richtung bügeln
picture-legend_grain = Fadenlauf
picture-legend_notch = Passzeichen
picture-legend_kept = aus einem früheren Schritt
picture-legend_lens = daneben vergrößert
picture-legend_sign_square = rechter Winkel
picture-legend_sign_tangent = läuft ohne Ecke weiter
picture-legend_pin = hier gesteckt
picture-legend_point_new = neuer Punkt
picture-legend_point_kept = früherer Punkt
picture-legend_ply = Stoff, im Schnitt gesehen
picture-legend_ply_face = rechte Stoffseite, im Schnitt gesehen
picture-legend_cut_mark = Querschnitt an dieser Stelle, in dieser Richtung gesehen
picture-legend_needle = Naht, im Schnitt gesehen

# ---- die Maßfigur

picture-figure_title_front = Wo gemessen wird, vorn
picture-figure_title_back = Wo gemessen wird, hinten
picture-figure_front = Eine stehende Figur von vorn, mit einem nummerierten Maßband für jedes Maß: { $tapes }.
picture-figure_back = Eine stehende Figur von hinten, mit einem nummerierten Maßband für jedes Maß: { $tapes }.
picture-figure_none = keine

# ---- abgerollte Nähte: eine Kante rollt an der anderen ab, Stelle für Stelle

picture-walk_title = { $rolled } ({ $rolled_piece }), abgerollt an { $still } ({ $still_piece })
picture-walk_title_sentence = { $title }.
picture-walk_numbered = { $number }: { $place }.
# Eine Stelle auf beiden Kanten: was es ist, wie weit, und picture-walk_equal oder picture-walk_longer.
picture-walk_place = { $place } bei { $at }: { $difference }
picture-walk_place_alone = { $place } bei { $at }, nur hier: { $piece }
picture-walk_notch_alone = { $place } bei { $at }, nur hier: { $piece }, ohne Gegenstück
picture-walk_equal = gleich
picture-walk_longer = { $piece } { $by } länger
picture-walk_all = Insgesamt { $first } und { $second }: { $difference }.
picture-walk_all_eased = Insgesamt { $first } und { $second }: { $difference }; das wird eingehalten.
picture-walk_heads = links: { $first }; rechts: { $second }
picture-walk_start = Anfang
picture-walk_end = Ende: { $difference }

# ---- die Stelle eines Befunds

picture-corner_title = Wo der Übergang nicht stimmt
picture-corner_bends = knickt um { $degrees }°
picture-corner_differs = Ecken weichen um { $degrees }° ab
picture-angle = { $degrees }°
# Eine Kante und ihr Teil, neben der Kante.
picture-corner_edge = { $edge }, { $piece }

# ---- eine abgezeichnete Kontur

picture-outline = Kontur { $outline } mit { $corners } Ecken, im Uhrzeigersinn nummeriert ab der untersten linken

# Zugeschnittener Stoff nach einer Anprobe.
picture-recut = { $piece }: alte und neue Nahtlinie
picture-tried_on_alt = Das Kleidungsstück, soweit es genäht ist, von vorn und von hinten gesehen.
picture-tried_on_level = Rundum am Saum stecken Nadeln, überall gleich hoch über dem Boden.
picture-recut_alt = { $piece }, wie es zugeschnitten ist, die linke Stoffseite oben: die alte Nahtlinie dünn gestrichelt, die neue kräftig, mit den Abständen zwischen beiden; was abgeschnitten wird, ist schraffiert.
picture-recut_left = { $size } übrig
picture-recut_lack = { $size } zu wenig

# Anprobezugabe neben der Nahtzugabe.
picture-with_extra = { $width }, davon { $extra } Anprobezugabe
picture-edge_allowance_extra = { $edge } mit { $allowance } Nahtzugabe und { $extra } Anprobezugabe
picture-extra_of = Anprobezugabe: { $edge }
# Anprobezugabe, die abgeschnitten wird, wenn der Sitz stimmt.
picture-trim_extra = { $piece }: die Anprobezugabe abschneiden
picture-trim_extra_alt = { $piece }, wie es zugeschnitten ist, die linke Stoffseite oben: die Anprobezugabe, die abgeschnitten wird, ist schraffiert, die Nahtlinie gestrichelt.

# ---- lengthen and shorten lines

picture-lengthen_here = hier verlängern oder kürzen
picture-piece_lengthen =
 { $count ->
    [one] Quer darüber eine Linie zum Verlängern oder Kürzen.
   *[other] Quer darüber { $count } Linien zum Verlängern oder Kürzen.
 }
