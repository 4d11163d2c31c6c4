# Zeichnen auf der Zeichenfläche: eine Konstruktion wird gewählt und die Zelle des Schritts geschrieben. Sätze, die mit
# "canvas_moves-point", "-extend", "-edge" usw. beginnen, stehen im Schritt; { $amount } steht für die gezeichnete Länge.

canvas_moves-draw = Zeichnen
canvas_moves-choose = Kanten und Punkte anklicken, um sie zu wählen, noch einmal anklicken, um sie loszulassen; dann eine Konstruktion wählen.
canvas_moves-move = Konstruktion
canvas_moves-way = Wie
canvas_moves-amount = Betrag
canvas_moves-title = Titel
canvas_moves-measure = Name des Maßes
canvas_moves-thing = Name des Gezeichneten
canvas_moves-why = Warum (für die Lernenden; darf leer bleiben)
canvas_moves-says = Lernende lesen
canvas_moves-write = Zelle schreiben
canvas_moves-copy = Zelle kopieren
canvas_moves-copied = Kopiert.
canvas_moves-source = Die Zelle
canvas_moves-cancel = Abbrechen
canvas_moves-grip = Ziehen, um den Betrag einzustellen
canvas_moves-writing = Die Zelle wird geschrieben …
canvas_moves-written = Die Zelle steht im Notebook und wurde ausgeführt. Das Notebook speichern, um sie zu behalten.
canvas_moves-not_run = Die Zelle steht im Notebook, wurde aber nicht ausgeführt. Hineinklicken und Umschalt und Eingabe drücken.
# { $step }: der Titel des Schritts, auf den die Zelle folgen muss.
canvas_moves-by_hand = Dieses Notebook-Programm lässt die Zeichenfläche keine Zelle anlegen. Den Text kopieren, unter „{ $step }“ eine Code-Zelle anlegen, ihn dort einfügen und ausführen.
canvas_moves-by_hand_first = Dieses Notebook-Programm lässt die Zeichenfläche keine Zelle anlegen. Den Text kopieren, unter der Zelle, die die Lektion anlegt, eine Code-Zelle anlegen, ihn dort einfügen und ausführen.
# { $chosen }: die gewählten Kanten und Punkte mit ihren Teilen.
canvas_moves-chosen = Gewählt: { $chosen }
canvas_moves-one_chosen = { $name } ({ $piece })
canvas_moves-corner_dot = Ecke { $first } / { $second }, { $piece }

# Die Konstruktionen im Menü.
canvas_moves-name_point = Punkt versetzen
canvas_moves-name_extend = Kante verlängern
canvas_moves-name_edge = Kante parallel versetzen
canvas_moves-name_square = Neue Kante im rechten Winkel
canvas_moves-name_round = Ecke abrunden
canvas_moves-name_curve = Kante als Kurve zeichnen
canvas_moves-name_into = Kurve von einer Kante in eine andere
canvas_moves-name_between = Linie oder Kurve zwischen zwei Punkten
canvas_moves-name_line = Hilfslinie im rechten Winkel
canvas_moves-name_parallel = Parallele Hilfslinie
canvas_moves-name_mirror = Andere Hälfte abpausen
canvas_moves-name_spread = Einschneiden und aufdrehen
canvas_moves-name_cut = Teil zerschneiden
canvas_moves-name_opening = Öffnung lassen
canvas_moves-name_notch = Passzeichen

# Wie eine Konstruktion ausgeführt wird.
canvas_moves-way_up = nach oben
canvas_moves-way_down = nach unten
canvas_moves-way_out = nach außen, zur Seite
canvas_moves-way_in = nach innen, zur Mitte
canvas_moves-at_edge = bei { $edge }
canvas_moves-square_way = bei { $edge }, { $way }
canvas_moves-inside = innerhalb des Teils
canvas_moves-outside = außerhalb des Teils
canvas_moves-curve_square = im rechten Winkel zu beiden Nachbarn
canvas_moves-curve_smooth = in beide Nachbarn auslaufend
canvas_moves-curve_square_smooth = Anfang im rechten Winkel, Ende auslaufend
canvas_moves-curve_smooth_square = Anfang auslaufend, Ende im rechten Winkel
canvas_moves-into_smooth = ohne Ecke auslaufend
canvas_moves-into_square = im rechten Winkel auftreffend
canvas_moves-between_straight = eine gerade Linie
canvas_moves-between_square = eine Kurve im rechten Winkel zu den Kanten dort
canvas_moves-between_smooth = eine Kurve in Richtung der Kanten dort
canvas_moves-spread_parallel = überall gleich weit
canvas_moves-spread_hinged = nur an der ersten Kante
canvas_moves-in_middle = in der Mitte
canvas_moves-from_edge = von { $edge } aus

# Was der Schritt sagt.
canvas_moves-corner = Ecke { $first } / { $second }
canvas_moves-ruled_again = { $edge } vom anderen Ende bis dorthin neu gerade ziehen.
canvas_moves-curved_again = { $edge } von dort aus als eine glatte Kurve neu zeichnen, an beiden Enden mit derselben Richtung wie vorher.
canvas_moves-allowed = { $amount } zugeben an: { $edge }.
canvas_moves-on_pieces = Auf diesen Teilen gleich arbeiten: { $pieces }.

canvas_moves-point_title = { $way ->
    [up] { $point } höher setzen
    [down] { $point } tiefer setzen
    [out] { $point } nach außen setzen
   *[in] { $point } nach innen setzen
}
canvas_moves-point = { $way ->
    [up] Von { $point } aus { $amount } senkrecht nach oben messen und markieren.
    [down] Von { $point } aus { $amount } senkrecht nach unten messen und markieren.
    [out] Von { $point } aus { $amount } gerade nach außen zur Seite hin messen und markieren.
   *[in] Von { $point } aus { $amount } gerade nach innen zur Mitte hin messen und markieren.
}
canvas_moves-extend_title = { $edge } verlängern
canvas_moves-extend = { $edge } um { $amount } gerade verlängern, über diese Kante hinaus: { $beside }.
canvas_moves-edge_title = { $way ->
    [up] { $edge } höher setzen
    [down] { $edge } tiefer setzen
    [out] { $edge } nach außen setzen
   *[in] { $edge } nach innen setzen
}
canvas_moves-edge = { $way ->
    [up] { $edge } { $amount } weiter oben parallel neu zeichnen. { $before } und { $after } bis dorthin kürzen oder gerade verlängern.
    [down] { $edge } { $amount } weiter unten parallel neu zeichnen. { $before } und { $after } bis dorthin kürzen oder gerade verlängern.
    [out] { $edge } { $amount } weiter außen parallel neu zeichnen. { $before } und { $after } bis dorthin kürzen oder gerade verlängern.
   *[in] { $edge } { $amount } weiter innen parallel neu zeichnen. { $before } und { $after } bis dorthin kürzen oder gerade verlängern.
}
canvas_moves-square_title = Im rechten Winkel neu zeichnen: { $edge }
canvas_moves-square = { $way ->
    [up] { $edge }: am Ende bei { $beside } im rechten Winkel { $amount } nach oben zeichnen; das ist: { $thing }.
    [down] { $edge }: am Ende bei { $beside } im rechten Winkel { $amount } nach unten zeichnen; das ist: { $thing }.
    [out] { $edge }: am Ende bei { $beside } im rechten Winkel { $amount } nach außen zeichnen; das ist: { $thing }.
   *[in] { $edge }: am Ende bei { $beside } im rechten Winkel { $amount } nach innen zeichnen; das ist: { $thing }.
}
canvas_moves-line_title = Hilfslinie im rechten Winkel: { $edge }
canvas_moves-line = { $way ->
    [up] { $edge }: am Ende bei { $beside } im rechten Winkel { $amount } nach oben eine Hilfslinie ziehen; das ist: { $thing }.
    [down] { $edge }: am Ende bei { $beside } im rechten Winkel { $amount } nach unten eine Hilfslinie ziehen; das ist: { $thing }.
    [out] { $edge }: am Ende bei { $beside } im rechten Winkel { $amount } nach außen eine Hilfslinie ziehen; das ist: { $thing }.
   *[in] { $edge }: am Ende bei { $beside } im rechten Winkel { $amount } nach innen eine Hilfslinie ziehen; das ist: { $thing }.
}
canvas_moves-round_title = Ecke abrunden: { $first } und { $second }
canvas_moves-round = Von der Ecke aus { $amount } auf { $first } und auf { $second } abmessen und markieren. Die Markierungen durch eine Kurve verbinden, die ohne Ecke in beide ausläuft.
canvas_moves-curve_title = { $edge } als Kurve zeichnen
canvas_moves-curve = { $way ->
    [square] { $edge } als eine Kurve neu zeichnen, im rechten Winkel zu { $before } und zu { $after }. Ihre Fülle beträgt { $amount } einer gleichmäßigen Kurve.
    [smooth] { $edge } als eine Kurve neu zeichnen, die ohne Ecke in { $before } und { $after } ausläuft. Ihre Fülle beträgt { $amount } einer gleichmäßigen Kurve.
    [square_smooth] { $edge } als eine Kurve neu zeichnen, im rechten Winkel zu { $before } und ohne Ecke in { $after } auslaufend. Ihre Fülle beträgt { $amount } einer gleichmäßigen Kurve.
   *[smooth_square] { $edge } als eine Kurve neu zeichnen, ohne Ecke in { $before } auslaufend und im rechten Winkel zu { $after }. Ihre Fülle beträgt { $amount } einer gleichmäßigen Kurve.
}
canvas_moves-into_title = { $edge } in { $second } auslaufen lassen
canvas_moves-into = { $way ->
    [smooth] Von { $edge } aus { $amount } auf { $second } abmessen. { $edge } als eine glatte Kurve zeichnen: sie verlässt { $first } im rechten Winkel und läuft dort ohne Ecke in { $second } aus.
   *[square] Von { $edge } aus { $amount } auf { $second } abmessen. { $edge } als eine glatte Kurve zeichnen: sie verlässt { $first } im rechten Winkel und trifft dort im rechten Winkel auf { $second }.
}
canvas_moves-between_title = Von { $first } nach { $second } zeichnen
canvas_moves-between = Von { $first } nach { $second } eine gerade Linie ziehen; das ist: { $thing }.
canvas_moves-between_curve = { $way ->
    [square] Von { $first } nach { $second } eine Kurve zeichnen, im rechten Winkel zu { $one } und zu { $other }, mit { $amount } der Fülle einer gleichmäßigen Kurve; das ist: { $thing }.
   *[smooth] Von { $first } nach { $second } eine Kurve zeichnen, am Anfang in Richtung { $one } und am Ende in Richtung { $other }, mit { $amount } der Fülle einer gleichmäßigen Kurve; das ist: { $thing }.
}
canvas_moves-parallel_title = Parallele zeichnen: { $edge }
canvas_moves-parallel = { $way ->
    [inside] { $amount } innerhalb eine Parallele zu { $edge } zeichnen; das ist: { $thing }.
   *[outside] { $amount } außerhalb eine Parallele zu { $edge } zeichnen; das ist: { $thing }.
}
# { $example }: wie eine der neuen Linien heißt.
canvas_moves-mirror_title = Andere Hälfte abpausen: { $edge }
canvas_moves-mirror = Das Papier an dieser Linie falten: { $edge }. Die andere Hälfte abpausen. Ihre Linien heißen { $example } und so weiter.
canvas_moves-spread_title = Aufdrehen von { $first } bis { $second }
canvas_moves-spread = { $way ->
    [parallel] Von der Mitte ({ $first }) bis zur Mitte ({ $second }) einschneiden und das Papier überall um { $amount } auseinanderschieben.
   *[hinged] Von der Mitte ({ $first }) bis zur Mitte ({ $second }) einschneiden und das Papier an { $first } um { $amount } aufdrehen; an { $second } hängt es zusammen.
}
canvas_moves-cut_title = { $thing } abschneiden ({ $piece })
canvas_moves-cut = Auf { $first } ({ $piece }) von { $beside } aus { $amount } abmessen und markieren. Von dort im rechten Winkel bis { $second } hinüberziehen und an dieser Linie auseinanderschneiden. Der Abschnitt mit { $beside } ist: { $thing }; die Linie ist dort: { $seam }.
canvas_moves-cut_part = der Abschnitt mit { $edge }
canvas_moves-opening_title = Öffnung lassen: { $edge }
canvas_moves-opening = { $way ->
    [middle] { $edge }: in der Mitte eine Öffnung von { $amount } markieren. Sie bleibt beim Nähen der Naht offen.
   *[other] { $edge }: eine Öffnung von { $amount } markieren, von { $beside } aus gemessen. Sie bleibt beim Nähen der Naht offen.
}
canvas_moves-notch_title = Passzeichen setzen: { $edge }
canvas_moves-notch = { $edge }: ein Passzeichen setzen, { $amount } von { $beside }.
# { $one } und { $other }: die Teile, zu denen die Kanten gehören.
canvas_moves-pair_title = Passzeichen gemeinsam setzen: { $first } und { $second }
canvas_moves-pair = { $first } ({ $one }) und { $second } ({ $other }): gemeinsam Passzeichen setzen, { $amount } von den Enden, die aufeinandertreffen; einfach am einen Teil ({ $one }), doppelt am anderen ({ $other }).

# Warum eine Konstruktion nicht passt.
canvas_moves-choose_edge = { $count ->
    [one] Eine Kante wählen.
   *[other] { $count } Kanten eines Teils wählen.
}
canvas_moves-choose_point = { $count ->
    [one] Einen Punkt oder eine Ecke wählen.
   *[other] { $count } Punkte oder Ecken eines Teils wählen.
}
canvas_moves-choose_alike = Auf mehreren Teilen Kanten und Punkte mit gleichen Namen und von gleicher Art wählen, damit ein Schritt sie alle zeichnen kann.
canvas_moves-one_piece = Nur auf einem Teil wählen.
canvas_moves-not_there_yet = Das Gewählte ist bei diesem Schritt noch nicht gezeichnet. Zuerst unter „Zeigen“ den Schritt wählen, dann darauf klicken.
canvas_moves-not_closed = Das Teil braucht dafür mindestens drei Kanten.
canvas_moves-has_dart = An { $edge } öffnet sich ein Abnäher; zuerst den Abnäher an eine andere Kante verlegen.
canvas_moves-has_pleat = An { $edge } endet eine Falte; dies ausführen, bevor die Falte gezeichnet wird.
canvas_moves-has_corner = { $edge } hat eine Ecke in sich, die bei einer neuen Linie verloren ginge. Von Hand zeichnen.
canvas_moves-on_fold = { $edge } liegt im Stoffbruch und muss an der Stelle bleiben; das Ende lässt sich nur an der Linie entlang verschieben.
canvas_moves-fold_straight = { $edge } liegt im Stoffbruch; Stoff faltet sich gerade.
canvas_moves-fold_moved = { $edge } liegt im Stoffbruch und muss an der Stelle bleiben. Dies vor dem Schritt ausführen, der die Kante in den Stoffbruch legt.
canvas_moves-fold_curved = Papier faltet sich nur an einer geraden Kante; diese ist rund: { $edge }.
canvas_moves-mirrored_already = Die andere Hälfte ist schon abgepaust, an: { $edge }.
canvas_moves-no_corner = { $point } ist keine Ecke des Umrisses.
canvas_moves-no_corner_there = { $first } läuft ohne Ecke in { $second } aus; es gibt nichts abzurunden.
canvas_moves-no_edge_at = Bei { $point } endet keine Kante; eine Kurve hat dort keinen Anhalt. Eine gerade Linie wählen.
canvas_moves-not_neighbours = { $first } und { $second } treffen nicht aufeinander. Eine Ecke wählen oder zwei Kanten, die sich dort treffen.
canvas_moves-not_one_between = Zwischen { $first } und { $second } muss eine Kante liegen: sie wird zur Kurve.
canvas_moves-same_place = Die beiden Punkte liegen an derselben Stelle.
canvas_moves-cut_earlier = { $piece } hat schon Nahtzugaben oder Passzeichen. Unter „Zeigen“ einen früheren Schritt wählen und das Teil dort zerschneiden.
canvas_moves-too_long = { $edge } misst nur { $length }. Weniger angeben.
canvas_moves-too_small = Einen Betrag über null angeben.
# { $name }: was eingetippt wurde.
canvas_moves-bad_amount = „{ $name }“ ist kein Prozentwert. Zum Beispiel 90 % eingeben.
