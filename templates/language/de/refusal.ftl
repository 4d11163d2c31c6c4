# Ablehnungen: was an einem Wert, einem Maß, einer Datei oder einer Zeichnung nicht geht und was zu tun ist (Schlüssel auf
# _do). Der Ort steht davor. Was im Notebook steht, bleibt, wie es ist.

refusal-near = Gemeint ist vielleicht „{ $name }“.
refusal-known = Hier gibt es: { $names }.
refusal-none = Hier gibt es noch keine.

# ---- Linien und Kurven ----
refusal-near_point = { $across } waagerecht, { $up } senkrecht
refusal-move_end_do = Ein Ende versetzen.
refusal-move_point_do = Einen der Punkte versetzen.
refusal-no_direction = Eine Linie ohne Länge hat keine Richtung.
refusal-no_parallel = Eine Linie ohne Länge hat keine Parallele.
refusal-same_points = Zwei Punkte fallen auf dieselbe Stelle, deshalb gibt es keine Richtung vom einen zum anderen.
refusal-no_place = Ein Punkt ergibt keine Stelle auf dem Papier.
refusal-no_place_do = Im Schritt, der ihn zeichnet, nach einer Teilung durch null oder einem fehlenden Maß suchen.
refusal-lines_apart = Die Linien eines Zugs schließen nicht aneinander an: eine endet { $gap } vor dem Anfang der nächsten.
refusal-lines_apart_do = Jede Linie dort beginnen, wo die vorige endet.
refusal-off_end = { $along } entlang einer Linie von { $length } liegt hinter ihrem Ende.
refusal-off_end_do = Einen Abstand zwischen 0 und { $length } nehmen.
refusal-cut_off_end = Eine Linie von { $length } lässt sich nicht bei { $along } teilen.
refusal-cut_off_end_do = Zwischen 0 und { $length } teilen.
refusal-nothing_between = Zwischen { $start } und { $end } entlang einer Linie liegt nichts.
refusal-nothing_between_do = Zwei verschiedene Abstände angeben.
refusal-carried_back = Eine Linie lässt sich nicht um { $by } verlängern.
refusal-above_zero_do = Einen Abstand über null angeben.
refusal-never_meets = Eine an ihrem Ende gerade verlängerte Linie trifft die andere nie.
refusal-never_meets_do = Die Richtung der Linie prüfen oder die andere verlängern.
refusal-curve_same_points = Zwei Punkte einer Kurve fallen auf dieselbe Stelle.
refusal-leave_one_out_do = Einen davon weglassen.
refusal-arc_radius = Ein Bogen braucht einen Radius über null, dieser ist { $radius }.
refusal-arc_radius_do = Das Maß prüfen, aus dem der Radius kommt.
refusal-arc_sweep = Ein Bogen kann nicht über { $degrees } Grad gehen.
refusal-arc_sweep_do = Einen Winkel bis zu einer vollen Drehung nehmen, nicht null.
refusal-curve_ends = Eine Kurve braucht zwei verschiedene Enden, hier fallen beide auf dieselbe Stelle.
refusal-fullness = Eine Wölbung von { $fullness } ergibt keine brauchbare Kurve.
refusal-fullness_do = Eine Wölbung von { $least } bis { $most } nehmen.
refusal-curve_crosses = Die Kurve würde sich selbst kreuzen.
refusal-curve_crosses_do = Ihre Enden weiter auseinanderrücken oder weniger Wölbung nehmen.
refusal-doubles_back = Die Kurve würde zurücklaufen: an einem Ende weicht sie { $degrees } Grad von der geraden Linie zum anderen ab.
refusal-doubles_back_do = Die Enden so versetzen, dass jedes vom anderen aus mit weniger als einem rechten Winkel zu erreichen ist.
refusal-doubles_back_full = Mit einer Wölbung von { $fullness } würde die Kurve zurücklaufen.
refusal-doubles_back_full_do = Weniger Wölbung nehmen.
refusal-curve_no_room = Die Kurve hat keinen Platz: ihre beiden Enden fallen auf dieselbe Stelle.
refusal-curve_no_room_do = Die Öffnung kleiner machen oder die Kante weiterführen, bevor die Kurve beginnt.
refusal-curve_chord = { $what } Ihre Enden liegen { $across } waagerecht und { $up } senkrecht auseinander.
refusal-turns_back = Die Linie kehrt um { $degrees } Grad um, zu scharf für eine Parallele.
refusal-turns_back_do = Die Ecke stumpfer zeichnen.
refusal-corner_short = An einer inneren Ecke sind die Linien für eine Parallele im Abstand von { $by } zu kurz.
refusal-corner_short_do = Dort weniger als { $by } nehmen oder die kürzere Linie verlängern.
refusal-curve_tight = Eine Parallele im Abstand von { $by } kann einer Kurve mit dem Radius { $radius } nicht folgen; sie würde sich überschlagen.
refusal-curve_tight_do = Dort weniger als { $radius } nehmen oder eine flachere Kurve zeichnen.
refusal-edge_gap = { $edge } endet { $gap } vor dem Anfang der nächsten Kante ({ $next }).
refusal-edge_open = { $edge } schließt nicht: das Ende liegt { $gap } vom Anfang entfernt.
refusal-edge_gap_do = Die Kanten aneinander anschließen oder die fehlende Kante dazwischen zeichnen.

# ---- Schnittteile ----
refusal-allowance_missing = { $edge } hat noch keine Nahtzugabe.
refusal-allowance_missing_do = Eine angeben, oder 0, wo auf der Linie geschnitten wird.
refusal-allowance_negative = Die Nahtzugabe ({ $edge }) ist { $value }; weniger als nichts geht nicht.
refusal-allowance_negative_do = Eine Breite angeben, oder 0, wo auf der Linie geschnitten wird.
refusal-notch_off = Ein Passzeichen liegt bei { $at }, die Kante ist aber nur { $length } lang: { $edge }.
refusal-notch_off_do = Das Passzeichen auf die Kante setzen.
refusal-allowances_meet = Zwei Nahtzugaben laufen an ihrer Ecke ineinander: { $one } ({ $one_width }) und { $other } ({ $other_width }).
refusal-allowances_meet_do = Eine davon schmaler machen oder die Ecke weiter öffnen.
refusal-allowance_tight = { $edge } ist enger gerundet als die Nahtzugabe von { $width } breit ist.
refusal-allowance_tight_do = Die Kurve weicher oder die Nahtzugabe schmaler machen.
refusal-dart_off = Der Abnäher ({ $dart }) öffnet sich von { $start } bis { $end }, die Kante ist aber nur { $length } lang: { $edge }.
refusal-dart_off_do = Den Abnäher auf die Kante setzen.
refusal-dart_legs = Die Schenkel des Abnähers ({ $dart }) sind { $one } und { $other } lang; zum Zusammennähen müssen sie gleich sein.
refusal-dart_legs_do = Die Spitze oder einen Schenkel versetzen, bis beide gleich lang sind.
refusal-fold_no_edge = { $fold } wird nach einer Seite gelegt, an der keine Kante mehr bleibt: { $edge }.
refusal-fold_no_edge_do = Andersherum legen oder versetzen.
refusal-fold_beyond_edge = { $fold } liegt gelegt nicht unter der Kante.
refusal-dart_beyond_do = Den Abnäher schmaler machen.
refusal-pleat_beyond_do = Flacher machen oder rechtwinkliger zur Kante zeichnen.
refusal-edge_folded_away = Von der Kante bleibt nichts, wenn Abnäher und Falten gelegt sind.
refusal-folds_over = Zwei Abnäher oder Falten liegen übereinander: { $edge }.
refusal-folds_over_do = Eine davon versetzen.
refusal-off_sewn = { $at } liegt jenseits der Kante, die genäht { $length } lang ist: { $place }.
refusal-off_sewn_do = Einen kürzeren Abstand angeben, gemessen vom Ende, an dem die beiden Kanten zusammentreffen.
refusal-edges_apart = { $one } und { $other } folgen nicht aufeinander: ihre nächsten Enden liegen { $gap } auseinander.
refusal-edges_apart_do = Die Kanten in der Reihenfolge nennen, in der sie um das Teil laufen.
refusal-pleat_lines = Die beiden Linien ({ $pleat }) sind { $one } und { $other } lang; um aufeinanderzuliegen, müssen sie gleich sein.
refusal-pleat_lines_do = Von Kante zu Kante neu zeichnen oder ein Ende versetzen, bis beide gleich lang sind.
refusal-pleat_nothing = Die Linien haben keine Länge: { $pleat }.
refusal-draw_again_do = Neu zeichnen.
refusal-pleat_off = { $pleat } liegt nicht auf der Kante, die { $length } lang ist: { $edge }.
refusal-pleat_off_do = Die Falte auf die Kante setzen.
refusal-joins_eat = Stücke von { $longest } werden von den Ansatznähten aufgebraucht, die je { $cost } kosten.
refusal-joins_eat_do = Längere Stücke zuschneiden oder mit schmalerer Nahtzugabe ansetzen.
refusal-strip_nothing = Das Maß ist { $value }.
refusal-strip_nothing_do = Eine Länge und eine Breite über null angeben.
refusal-fold_curved = Das Teil lässt sich an einer Kante, die nicht gerade ist, nicht aufklappen: { $edge }.
refusal-fold_curved_do = Den Stoffbruch gerade ziehen oder das Teil als Paar zuschneiden.

# ---- eingegebene Längen ----
refusal-not_a_length = „{ $text }“ ist nicht als Länge zu lesen.
refusal-not_a_length_do = Zum Beispiel 2,5 cm, 25 mm, 1 1/2 in oder 3/8" eingeben.
refusal-by_zero = „{ $text }“ teilt durch null.
refusal-by_zero_do = Zum Beispiel 3/8 in eingeben.
refusal-no_unit = „{ $text }“ hat keine Einheit.
refusal-no_unit_do = { $text } cm oder { $text } in eingeben.
refusal-not_finite = Eine Länge muss eine endliche Zahl sein.
refusal-not_finite_do = Nach einer Teilung durch null suchen oder eine Länge wie 2,5 cm eingeben.

# ---- Zahlen ----
refusal-no_number = ein Wert, der keine Zahl ist

# ---- Schritte und Werte ----
refusal-step = Schritt „{ $step }“
refusal-finished = Fertigmaß „{ $title }“
refusal-block = Der Grundschnitt, von dem die Lektion ausgeht
refusal-endless = das Konstruieren wurde nach { $seconds } s abgebrochen, davon { $took } s hier.
refusal-endless_do = Den zuletzt bewegten Wert zurückstellen und nach einer Schleife suchen, die nie endet. Eine Lektion, die länger braucht, sagt es: Lesson(..., time_limit=20).
refusal-interrupted = das Konstruieren wurde unterbrochen.
refusal-interrupted_do = Was zu sehen ist, ist älter. Einen Wert bewegen oder die Zelle noch einmal ausführen.
refusal-line = Linie
refusal-here = { $place }
refusal-out_of_range = { $name }: { $value } liegt außerhalb des Bereichs von { $least } bis { $most }.
refusal-out_of_range_do = Einen Wert innerhalb des Bereichs wählen oder den Bereich dort ändern, wo der Parameter festgelegt ist.
refusal-not_a_share = „{ $text }“ ist nicht als Anteil zu lesen.
refusal-not_a_share_do = Zum Beispiel 70 % eingeben.
refusal-not_a_count = „{ $text }“ ist nicht als ganze Zahl zu lesen.
refusal-not_a_count_do = Zum Beispiel 4 eingeben.
refusal-crosses_worn = { $edge } kreuzt { $other }, { $across } von der Mittellinie und { $up } über der Taille.
refusal-crosses = { $edge } kreuzt { $other }, { $across } rechts vom Nullpunkt des Papiers und { $up } darüber.
refusal-crosses_do = Das zuletzt geänderte Maß wieder in Richtung des alten Werts ändern oder eine der beiden Linien neu zeichnen.

# ---- Zeichnen ----
refusal-below_zero = { $value } ist weniger als nichts.
refusal-below_zero_do = Einen Abstand von null oder mehr angeben.
refusal-square_misses = Im rechten Winkel von hier aus wird die Linie nie getroffen: { $line }.
refusal-square_misses_do = Die andere Richtung versuchen.
refusal-line_nothing = Eine Linie braucht zwei verschiedene Punkte.
refusal-line_nothing_do = Ihr eine Länge geben.
refusal-lines_added = Linien auf dem Papier werden nicht mit + verbunden.
refusal-lines_added_do = Mehrere Kanten nacheinander nennen, etwa [front.neck, back.neck], oder aus zweien, die sich berühren, eine Linie machen: one.joined(other).
refusal-line_short = Die Linie ist nur { $length } lang, bei { $at } gibt es keinen Punkt: { $line }.
refusal-shorter_do = Einen kürzeren Abstand angeben.
refusal-lines_miss = Zwei Linien treffen sich nicht: { $line } und { $other }.
refusal-lines_miss_do = Prüfen, ob beide liegen, wo sie sollen.
refusal-share_outside = Ein Anteil liegt zwischen 0 und 1, nicht bei { $share }.
refusal-share_outside_do = Eine Zahl von 0 bis 1 angeben.
refusal-join_below = Die Kurve soll bei { $at } einmünden, die Linie ist aber nur { $length } lang: { $line }.
refusal-join_below_do = Sie weiter oben einmünden lassen oder das Kleidungsstück länger machen.
refusal-reaches_below = { $line } ist { $length } tief und reicht tiefer als das Ende der anderen Linie: { $other }.
refusal-reaches_below_do = Die eine weniger tief oder die andere länger machen: { $line }, { $other }.
refusal-no_room_to_round = Vom Ende der Linie „{ $line }“ läuft keine Rundung mit { $radius } Radius in die Linie „{ $other }“ ein: Über deren Ende ist kein Platz dafür.
refusal-no_room_to_round_do = „{ $line }“ kürzer machen, eine engere Rundung zulassen oder „{ $other }“ länger machen.
refusal-never_clear = eine { $size } lange Linie reicht von dort aus, wie man sie auch biegt, nicht bis { $by } außerhalb der Linie „{ $line }“.
refusal-never_clear_do = Weiter außen beginnen oder sie länger machen: Sie muss außerhalb der Linie „{ $line }“ enden.
refusal-edges_miss = Zwei Kanten treffen sich auch gerade verlängert nicht: { $one } und { $other }.
refusal-edges_miss_do = Die Linien davor prüfen oder die Ecke von Hand zeichnen.
refusal-grain_outside = Der Fadenlauf läge außerhalb des Teils.
refusal-grain_outside_do = Ihn hineinsetzen: at=....
refusal-grain_curved = Ein Fadenlauf ist gerade, diese Linie aber nicht: { $line }.
refusal-grain_curved_do = Eine gerade Linie nennen oder eine Richtung: along="up".
refusal-fold_is_curved = Stoff wird gerade gefaltet, diese Kante ist aber nicht gerade: { $edge }.
refusal-fold_is_curved_do = Die Kante gerade ziehen oder das Teil als Paar zuschneiden.
refusal-paper_fold_curved = Papier lässt sich nur an einer geraden Linie falten, diese ist nicht gerade: { $line }.
refusal-strip_size = Ein Streifen braucht Länge und Breite; dieser ist { $length } lang und { $width } breit.
refusal-notch_past = Ein Passzeichen bei { $at } liegt hinter dem Ende der Kante, die { $length } lang ist: { $edge }.
refusal-nearer_do = Näher setzen.
refusal-opening_off = Die Öffnung von { $start } bis { $end } passt nicht auf die Kante, die { $length } lang ist: { $edge }.
refusal-opening_off_do = Die Öffnung kürzer machen oder höher setzen oder das Kleidungsstück verlängern.
refusal-notch_taken = Bei { $at } gibt es schon ein Passzeichen: { $edge }.
refusal-notch_taken_do = Dieses weglassen oder anderswo setzen.
refusal-mark_over = Die Markierung würde über zwei Kanten laufen: { $mark }.
refusal-mark_over_do = Für jede Kante einen Teil markieren.
refusal-point_off = Der Punkt liegt nicht auf der Kante: { $place }.
refusal-point_off_do = Ihn auf der Kante markieren.
refusal-mark_off = Die Markierung ({ $mark }) liegt nicht auf der Kante: { $place }.
refusal-mark_off_do = Die Kante nennen, auf der sie markiert ist.
refusal-level_misses = Im rechten Winkel von diesem Punkt aus wird die Kante nicht getroffen: { $edge }.
refusal-level_misses_do = Einen anderen Punkt nehmen.
refusal-line_misses_edge = Die Linie ({ $line }) trifft die Kante nicht, weder wie sie liegt noch über die Mittellinie gefaltet: { $edge }.
refusal-line_misses_edge_do = Die Höhe als Länge angeben oder einen Punkt auf dieser Höhe.
refusal-buttonholes_off = Knopflöcher von { $start } bis { $end } liegen nicht auf der Linie, die { $length } lang ist: { $edge }.
refusal-buttonholes_off_do = Die erste Stelle vor der letzten angeben, beide vom Anfang der Kante gemessen.
refusal-buttonhole_nothing = Ein Knopfloch braucht eine Länge.
refusal-buttonhole_nothing_do = Zum Beispiel button=1.5 * cm angeben.
refusal-slits_meet = Schlitze von { $size } alle { $gap } laufen ineinander.
refusal-slits_meet_do = Weniger setzen oder quer zur Kante legen.
refusal-buttons_length = Die Kante für die Knöpfe ({ $edge }) ist { $length } lang, die der Knopflöcher { $other }.
refusal-buttons_length_do = Zuerst die beiden Kanten gleich lang machen oder aneinander angleichen.
refusal-laid_outside = Dort aufgelegt ragt es { $by } aus dem Teil heraus: { $piece }.
refusal-laid_outside_do = Weiter nach innen legen oder kleiner machen.
refusal-laid_over_fold_do = Es reicht über den Bruch, wo die andere Hälfte liegt: auch im Bruch zuschneiden und Bruch auf Bruch legen, oder weiter nach innen legen.
refusal-dart_in_way = An dieser Kante öffnet sich ein Abnäher: { $edge }.
refusal-dart_in_way_do = Die Knopflöcher nach einer anderen Linie setzen.
refusal-buttonholes_count = { $count } Knopflöcher füllen { $length } nicht.
refusal-buttonholes_count_do = Mindestens 2 angeben, oder für 1 dieselbe erste und letzte Stelle.
refusal-spacing_nothing = Der Abstand ist null.
refusal-spacing_nothing_do = Zum Beispiel spacing=8 * cm angeben.
refusal-buttonholes_many = { $count } Knopflöcher sind mehr, als ein Kleidungsstück hat.
refusal-unit_do = Die Einheit prüfen.
refusal-outside_piece = Es liegt außerhalb des Teils.
refusal-outside_piece_do = Nach innen versetzen.
refusal-folds_order = Die Brüche liegen bei { $folds }.
refusal-folds_order_do = Von der Nahtlinie nach außen angeben, mindestens 1 mm auseinander: folds=(0, 4 * cm).
refusal-fold_beyond = Ein Bruch { $at } außerhalb der Kante liegt jenseits des Stoffs, der bei { $most } endet: { $edge }.
refusal-fold_beyond_do = Näher an der Nahtlinie falten oder die Zugabe breiter machen.
refusal-corner_size = Eine Größe von { $size } lässt sich nicht schneiden.
refusal-corner_size_do = Den Abstand von der Ecke der Nahtlinien angeben.
refusal-corner_arc = Ein Bogen { $size } von der Ecke würde in die Nahtzugabe schneiden, die { $width } breit ist.
refusal-corner_arc_do = { $width } oder mehr nehmen oder size weglassen.
refusal-corner_reach = Die Spitze liegt { $reach } von der Ecke, { $size } schneiden also nichts ab.
refusal-corner_reach_do = Eine Größe unter { $reach } angeben.

# ---- Abnäher, Falten und Schnitte im Papier ----
refusal-legs_differ = Die Schenkel des Abnähers unterscheiden sich um { $by }: { $dart }.
refusal-legs_differ_do = Vor dem Verlegen die Schenkel gleich lang machen.
refusal-dart_share = Ein Teil eines Abnähers ist ein Anteil über 0 und bis 1, nicht { $share }.
refusal-dart_on_old = Der neue Abnäher läge auf dem alten.
refusal-beside_do = Eine Stelle daneben angeben.
refusal-slash_fold = Der Schnitt würde den Stoffbruch teilen.
refusal-other_edge_do = Eine andere Kante wählen.
refusal-dart_nothing = Ein Abnäher braucht einen Inhalt über null.
refusal-more_do = Zum Beispiel { $size } angeben.
refusal-dart_no_fit = Ein Abnäher von { $intake } passt bei { $at } nicht auf die Kante, die { $length } lang ist: { $edge }.
refusal-dart_no_fit_do = Schmaler machen oder näher zur Mitte setzen.
refusal-dart_points_out = Der Abnäher würde aus dem Teil hinauszeigen.
refusal-dart_points_out_do = Seine Spitze ins Teil setzen.
refusal-dart_wide = Der Abnäher ist breiter als tief.
refusal-dart_wide_do = Schmaler oder tiefer machen.
refusal-dart_legs_miss = Nicht beide Schenkel des Abnähers erreichen die Kante: { $edge }.
refusal-dart_aside = Die Spitze des Abnähers liegt zu weit seitlich von seiner Stelle an der Kante: { $edge }.
refusal-dart_opposite_do = Den Abnäher gegenüber seiner Spitze setzen.
refusal-dart_short = Der Abnäher ({ $dart }) ist { $deep } tief; er kann nicht { $by } vor der Spitze enden.
refusal-shorten_less_do = Weniger kürzen.
refusal-take_in = { $amount } lassen sich auf { $over } nicht einhalten.
refusal-spread_more_do = Weiter verteilen.
refusal-pleat_along = Die Linie läuft fast an der Kante entlang, so lässt sich nichts hineinlegen: { $edge }.
refusal-pleat_along_do = Eine Linie angeben, die die Kante kreuzt.
refusal-no_edge_across = Gerade gegenüber liegt keine Kante.
refusal-no_edge_across_do = Die Kante nennen, zu der sie läuft.
refusal-takes_nothing = Es muss mehr als nichts aufnehmen.
refusal-pleat_same_edge = Anfang und Ende liegen auf derselben Kante: { $edge }.
refusal-pleat_same_edge_do = Zu einer anderen Kante führen.
refusal-tuck_short = Eine Biese von { $long } lässt sich nicht { $sewn } weit steppen.
refusal-tuck_short_do = Weniger weit steppen oder sewn= weglassen, um sie ganz zu steppen.
refusal-box_narrow = Eine Kellerfalte von { $wide } kann zwei Brüche von { $deep } nicht verdecken.
refusal-box_narrow_do = Die Falte breiter machen oder weniger aufnehmen.
refusal-row_empty = Eine Reihe hat mindestens eine Biese, nicht { $count }.
refusal-row_empty_do = Eine Anzahl ab 1 angeben.
refusal-tucks_over = Biesen von { $depth } Tiefe im Abstand von { $apart } lägen auf der Naht der nächsten.
refusal-tucks_over_do = Mindestens { $depth } auseinander setzen.
refusal-tucks_off = { $count } Biesen im Abstand von { $apart } enden bei { $last }, die Kante ist aber { $length } lang: { $edge }.
refusal-tucks_off_do = Weniger machen, enger setzen oder näher am Anfang beginnen.
refusal-spread_far = So weit lässt es sich nicht aufspreizen.
refusal-spread_far_do = Weniger aufspreizen.
refusal-dart_opens_on = Der Abnäher ({ $dart }) öffnet sich an dieser Kante; eine Änderung würde seine Schenkel ungleich machen: { $edge }.
refusal-dart_opens_on_do = Zuerst den Abnäher an eine andere Kante verlegen.
refusal-pleat_ends_on = { $pleat } endet an dieser Kante; eine Änderung würde die Linien zurücklassen: { $edge }.
refusal-pleat_ends_on_do = Zuerst die Kante ändern und dann die Falte zeichnen.
refusal-edge_short = Die Kante ist nur { $length } lang: { $edge }.
refusal-move_less_do = Weniger versetzen.
refusal-neck_into_dart = Der Halsausschnitt würde in den Abnäher laufen: { $dart }.
refusal-widen_less_do = Weniger erweitern.
refusal-no_place_on = Bei { $at } gibt es keine Stelle, die Kante ist { $length } lang: { $edge }.
refusal-inside_fold = { $at } entlang der Kante ({ $edge }) liegt innerhalb von { $fold }.
refusal-slash_leaves = Die Schnittlinie verlässt das Papier: { $edge }.
refusal-slash_leaves_do = Eine Stelle wählen, die auf gerader Linie zu erreichen ist.
refusal-slash_outside = Die Schnittlinie liegt außerhalb des Papiers.
refusal-other_place_do = Eine andere Stelle wählen.
refusal-slash_through = Die Schnittlinie läuft durch { $fold }.
refusal-slash_dart_do = Zuerst diesen Abnäher verlegen.
refusal-slash_pleat_do = Die beiden auseinanderhalten oder diese zuerst zeichnen.

# ---- Angleichen, Belege, Futter ----
refusal-true_too_far = Die eine Kante ({ $one }) ist { $one_length } lang, die andere ({ $other }) { $other_length }: { $by } Unterschied sind mehr, als das Angleichen verdecken soll.
refusal-true_too_far_do = Den Fehler in der Zeichnung suchen oder sagen, wie viel eingehalten wird: ease=....
refusal-true_fold = Die Kante endet am Stoffbruch, der sich nicht versetzen lässt: { $edge }.
refusal-true_fold_do = Dieses Ende festhalten und das andere ändern.
refusal-true_take_off = { $by } lassen sich nicht wegnehmen, nur { $left } liegen zwischen dem Ende und dem nächsten Abnäher oder der nächsten Ecke: { $edge }.
refusal-true_take_off_do = Die andere Kante oder das andere Ende ändern.
refusal-true_sharp = { $one } und { $other } treffen sich am Ende der Naht mit { $degrees }°; das ist zu spitz, um glatt gezeichnet zu werden.
refusal-true_sharp_do = Die Ecke neu zeichnen oder als gewollte Ecke angeben.
refusal-true_no_room = Zum Glätten ist kein Platz, nur { $reach } bis zum nächsten Abnäher oder zur nächsten Ecke: { $edge }.
refusal-true_no_room_do = Dieses Ende festhalten, mit hold="start" oder hold="end", oder den Abnäher versetzen.
refusal-hem_shorter = Der Saum kann nicht { $by } kürzer werden: die Kanten daneben sind nur { $length } lang.
refusal-dart_left_out = Der Abnäher ({ $dart }) öffnet sich an einer Kante, die das Futter auslässt: { $edge }.
refusal-dart_left_out_do = Zuerst den Abnäher an eine andere Kante verlegen oder vor dem Abnehmen des Futters nähen.
refusal-facing_deeper = Der Beleg ist tiefer als die Kante lang, für das Futter bleibt nichts: { $edge }.
refusal-facing_narrower_do = Den Beleg schmaler machen.
refusal-pleat_curved = Eine Falte wird an einer geraden Linie zugegeben, diese ist nicht gerade: { $edge }.
refusal-pleat_curved_do = Die Mittelkante nennen: at='centre'.
refusal-dart_cut_away = Der Abnäher ({ $dart }) öffnet sich, wo die Kante weggeschnitten wird: { $edge }.
refusal-dart_cut_away_do = Zuerst den Abnäher an eine andere Stelle verlegen.
refusal-dart_not_beside = Der Abnäher ({ $dart }) kann nur in eine Kante gelegt werden, die an seine anschließt ({ $beside }), nicht in diese: { $edge }.
refusal-dart_not_beside_do = Eine Kante nennen, die an einem Ende dieser Kante beginnt: { $beside }.
refusal-dart_into_fold = Diese Kante liegt im Stoffbruch, der Abnäher ({ $dart }) kann nicht in sie gelegt werden: { $edge }.
refusal-dart_into_fold_do = Die Kante am anderen Ende nennen, oder den Abnäher herausnehmen, bevor das Teil in den Bruch gelegt wird.
refusal-facing_no_fit = Ein Beleg von { $depth } Tiefe passt nicht hinein ({ $pieces }): { $what }
refusal-drawn_short = Die Außenkante ist { $length } lang und kann hier nicht um { $by } eingezogen werden: { $edge }.
refusal-drawn_short_do = Weniger einziehen.
refusal-seam_past = Die Naht wird über das Ende der Kante hinaus versetzt.
refusal-seam_past_do = Weniger weit versetzen oder die Naht weglassen.
refusal-run_gone = Von der Kante bleibt dafür nichts übrig.
refusal-seam_less_do = Die Naht weniger weit versetzen.

# ---- Nähen ----
refusal-not_negative_do = Eine Länge von null oder mehr schreiben.
refusal-too_wide = { $value } ist mehr als { $most } und damit breiter, als diese Arbeit zulässt.
refusal-unit_mm_do = Die Einheit prüfen: mm, cm oder inch.
refusal-zero = Es ist null.
refusal-zero_do = Eine Breite schreiben, etwa 1 * cm.
refusal-opening_off_seam = Eine Öffnung von { $start } bis { $end } liegt nicht auf einer Naht von { $length }.
refusal-opening_off_seam_do = Das nähere Ende zuerst angeben und beide auf der Naht halten.
refusal-opening_whole = Die Öffnung nimmt die ganze Naht ein.
refusal-opening_whole_do = Einen Teil der Naht zum Nähen lassen.
refusal-off_run = { $at } liegt jenseits der Kante, die { $length } lang ist: { $place }.
refusal-from_start_do = Vom Anfang der Kante messen.
refusal-at_beside_mark = { $at } steht neben der Markierung „{ $mark }“, die für sich schon eine Stelle ist.
refusal-at_past_mark = { $at } liegt jenseits der Markierung „{ $mark }“, die { $length } lang ist.
refusal-at_beside_mark_do = at= weglassen, oder statt der Markierung die Kante nennen und an ihr entlang messen.
refusal-at_missing = Es steht nicht da, wo an der Kante.
refusal-at_missing_do = Schreiben: at=10 * cm; oder statt der Kante eine Markierung nennen.
refusal-band_fold_eaten = Der Bruch soll { $deeper } über die Naht reichen, eingeschlagen werden aber nur { $allowance }.
refusal-band_fold_eaten_do = Ein kleineres deeper= schreiben, etwa 3 mm, oder eine breitere Nahtzugabe.
refusal-no_part = Ein Teil von { $start } bis { $end } ist kein Teil einer Kante.
refusal-no_part_do = Das nähere Ende zuerst angeben, beide vom Anfang der Kante gemessen.
refusal-part_before = Ein Teil kann nicht bei { $start } einer Kante beginnen.
refusal-part_reversed = { $from } liegt bei { $start }, { $to } aber schon bei { $end }, beides ab { $tip } gemessen: in dieser Reihenfolge liegt kein Stück dazwischen.
refusal-part_reversed_do = Die nähere Stelle zuerst nennen.
refusal-part_empty = { $from } und { $to } sind dieselbe Stelle, { $start } ab { $tip }: es liegt kein Stück dazwischen.
refusal-part_empty_do = Zwei Stellen nennen, die auseinanderliegen, oder eine davon in der Konstruktion verschieben.
refusal-part_past = Der Teil endet bei { $end }, die Kante ist aber nur { $length } lang.
refusal-part_backward = Der Teil endet bei { $end }, beginnt aber bei { $start }, und die Kanten sind { $length } lang.
refusal-zip_narrow = Eine Nahtzugabe von { $width } ist zu schmal, um einen Reißverschluss anzunähen.
refusal-zip_narrow_do = Der Öffnung mindestens { $least } geben.
refusal-zip_row = { $at } vom Bruch gesteppt würde die Naht die Nahtzugabe von { $width } dahinter verfehlen.
refusal-zip_row_do = Näher am Bruch steppen oder der Öffnung eine breitere Nahtzugabe geben.
refusal-tower_piece = Der Schlitzbesatz und die Kanten um ihn herum müssen auf einem eigenen Teil liegen.
refusal-tower_piece_do = Kanten des dafür zugeschnittenen Teils nennen, etwa tower.edge und around=[tower.point, tower.outer].
refusal-slit_long = { $slit } geht { $length } in das Teil hinein, von hier: { $edge }. Hinter dem Ende bleibt kein Stoff.
refusal-slit_long_do = Kürzer machen: mindestens { $least } des Teils müssen dahinter liegen.
refusal-fly_same_piece = Der Schlitzbeleg oder der Untertritt ist kein eigenes Schnittteil.
refusal-fly_same_piece_do = Die lange Kante eines dafür zugeschnittenen Teils nennen, etwa facing=fly_facing.edge.
refusal-double_dart_order = Die breiteste Stelle liegt nicht zwischen den beiden Spitzen.
refusal-double_dart_order_do = Die obere Spitze als top nennen, die untere als bottom und einen Punkt dazwischen als at.
refusal-double_dart_edge = { $dart } reicht bis an diese Kante: { $edge }. Ein Abnäher mit zwei Spitzen läuft im Innern des Teils aus.
refusal-double_dart_edge_do = Mindestens { $least } davor enden lassen oder mit add_dart einen Abnäher zeichnen, der sich an dieser Kante öffnet.
refusal-no_double_dart = Die Markierung „{ $mark }“ ist kein Abnäher mit zwei Spitzen.
refusal-no_double_dart_do = Einen mit add_double_dart zeichnen und hier nennen; ein Abnäher, der sich an einer Kante öffnet, wird mit make.dart genäht.
refusal-other_fastener = Die Markierung „{ $mark }“ sagt: { $is }. Hierher gehört etwas anderes: { $wanted }.
refusal-other_fastener_do = Eine Markierung dieser Art ({ $wanted }) oder einen einfachen Punkt nennen. Haken oder Kugelteil kommen an die Seite, die oben liegt, Steg, Öse oder Federteil an die untere.
refusal-grade = { $wide } ist nicht breiter als { $narrow }.
refusal-grade_do = Auf zwei verschiedene Breiten abstufen.
refusal-strip_eaten = Eine Nahtzugabe von { $width } lässt von einem { $cut } breit zugeschnittenen Streifen nichts übrig.
refusal-strip_eaten_do = Breiter zuschneiden oder eine schmalere Nahtzugabe nehmen.
refusal-overlap_long = Ein Untertritt von { $size } nimmt die ganze Kante ein, die { $length } lang ist: { $edge }.
refusal-overlap_long_do = Den Untertritt prüfen und das kurze Ende des Bunds nennen.
refusal-cloth_narrow = Breiter, als Stoff von { $width } hergibt: { $piece } ({ $across }).
refusal-cloth_narrow_do = Breiteren Stoff nehmen oder eine Naht in diesem Teil vorsehen.

# ---- der Code des Schritts ----
refusal-at_line = { $place }, bei „{ $line }“

# ---- Ecken ----
refusal-folds_none = Es ist kein Bruch genannt.
refusal-extra_on_fold = diese Kante liegt im Stoffbruch, wo nichts geschnitten wird: { $edge }.
refusal-extra_on_fold_do = Die Anprobezugabe einer Kante geben, die geschnitten wird.

# A bound that follows from other values; $causes are these, each with its value.
refusal-bound_cause = { $name } { $value }
refusal-bound_at_least = { $name }: { $value } ist zu wenig; mit { $causes } sind es mindestens { $bound }.
refusal-bound_at_least_do = { $name } auf mindestens { $bound } stellen oder ändern, wovon es abhängt.
refusal-bound_at_most = { $name }: { $value } ist zu viel; mit { $causes } sind es höchstens { $bound }.
refusal-bound_at_most_do = { $name } auf höchstens { $bound } stellen oder ändern, wovon es abhängt.
refusal-no_answer = das Notebook hat keine Antwort gegeben.
refusal-no_answer_do = Noch einmal ausführen.
refusal-cut_alike_left = { $piece } hat keine linke Hälfte: Die { $count } Lagen werden gleich zugeschnitten.
refusal-cut_alike_right = { $piece } hat keine rechte Hälfte: Die { $count } Lagen werden gleich zugeschnitten.
refusal-cut_alike_do = Für eine linke und eine rechte Hälfte { $call } schreiben.
refusal-no_moment = { $name } ist „{ $said }“; das ist keine Zahl von Sekunden.
refusal-no_moment_do = Ganze Sekunden seit Anfang 1970 angeben oder die Angabe weglassen.
