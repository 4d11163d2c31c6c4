# Das Arbeitsblatt zum Konstruieren von Hand: jeder Schritt in Zahlen, für Lineal, Winkel und Papier.
# Punkte haben Buchstaben (A, B, ...). Jede Länge ist Text in einem System.

worksheet-start = Der Grundschnitt am Anfang
worksheet-how = Punkte werden von O aus gemessen, wo sich zwei Linien im rechten Winkel kreuzen: zuerst entlang der waagerechten Linie, dann im rechten Winkel dazu. Kurven werden von der geraden Linie zwischen zwei Punkten aus abgetragen: die Strecken auf ihr abmessen, die Abstände im rechten Winkel dazu abtragen und eine glatte Kurve durch die Markierungen zeichnen.
worksheet-alike = { $pieces }: alle gleich
worksheet-origin = Auf Papier eine senkrechte Linie und im rechten Winkel dazu eine waagerechte ziehen. Sie kreuzen sich in O.
# { $line } nennt eine Linie der Schnittzeichnung, die darauf liegt.
worksheet-upright = Die senkrechte Linie ist { NOM($line) }.
worksheet-level = Die waagerechte Linie ist { NOM($line) }.

# Wo ein Punkt liegt: Zellen einer Tabelle.
worksheet-right = { $length } nach rechts
worksheet-left = { $length } nach links
worksheet-up = { $length } nach oben
worksheet-down = { $length } nach unten
worksheet-on_upright = auf der senkrechten Linie
worksheet-on_level = auf der waagerechten Linie
worksheet-at_origin = in O
worksheet-point = { $letter }: { $across }, { $above }.
# { $name } ist der eigene Name des Punkts.
worksheet-named_point = { $letter }, { $name }: { $across }, { $above }.
worksheet-point_at_origin = { $letter }: in O.
worksheet-named_point_at_origin = { $letter }, { $name }: in O.

# Linien. { $edge } ist der Name einer Linie, { $start } und { $end } sind Buchstaben von Punkten.
worksheet-rule = { $edge }: eine Gerade von { $start } nach { $end } ziehen, { $length }.
worksheet-curve = { $edge }: eine Kurve von { $start } nach { $end } zeichnen. Die Gerade dazwischen ist { $chord } lang.
# Auf welcher Seite der Geraden, vom ersten zum zweiten Punkt gesehen.
worksheet-off_left = { $length } nach links
worksheet-off_right = { $length } nach rechts
worksheet-off_none = auf der Linie
worksheet-offset = { $along } von { $start }: { $off }.
worksheet-leaves = In { $start } auf diese Stelle zielen: { $along } auf der Geraden, dann { $off }.
worksheet-leaves_straight = In { $start } entlang der Geraden beginnen.
# { $along } wird von { $end } zurückgemessen.
worksheet-arrives = In { $end } von dieser Stelle her einlaufen: { $along } davor auf der Geraden, dann { $off }.
worksheet-arrives_straight = In { $end } entlang der Geraden einlaufen.
worksheet-trim = { $edge }: von der vorher gezeichneten Linie nur das Stück von { $start } bis { $end } behalten.
# { $line } ist eine Linie des Teils { $piece }.
worksheet-trace = { $edge }: { ACC($line) } { GEN($piece) } von { $start } bis { $end } abpausen.
worksheet-rub_out = { ACC($lines) } ausradieren.

# Was auf den Linien markiert wird.
worksheet-notch =
    { $kind ->
        [double] { $edge }: ein doppeltes Passzeichen, { $length } von { $start } entlang der Linie.
       *[single] { $edge }: ein Passzeichen, { $length } von { $start } entlang der Linie.
    }
worksheet-opening = { $edge }: { ACC($mark) } von { $low } bis { $high } ab { $start } entlang der Linie markieren.
worksheet-mark_on_edge = { $edge }: { ACC($mark) } { $length } von { $start } entlang der Linie markieren.
worksheet-allow = Außen { DAT($lines, with: "an") } { $width } Nahtzugabe anzeichnen.
worksheet-grain = Fadenlauf
worksheet-strip = { $title }: { $count } Streifen zuschneiden, { $length } lang und { $width } breit.

# Das Bild.
worksheet-title = { $piece }, zum Zeichnen von Hand
worksheet-alt = { $piece } mit den Buchstaben der Punkte, den Geraden, von denen die Kurven abgetragen werden, und den Abständen. { $words }

# Punkte und Linien der Grundschnitte, wo die Lektion keine eigenen Worte dafür hat.
worksheet-name-back_cap = hintere Armkugel
worksheet-name-front_cap = vordere Armkugel
worksheet-name-bust_line = Brustlinie
worksheet-name-elbow_line = Ellbogenlinie
worksheet-name-hip_line = Hüftlinie
worksheet-name-knee_line = Knielinie
worksheet-name-sleeve_centre = Ärmelmitte
worksheet-name-thigh_line = Oberschenkellinie
worksheet-name-upper_arm_line = Oberarmlinie
worksheet-name-waist_line = Taillenlinie
worksheet-name-back_crossing = Kreuzungspunkt hinten
worksheet-name-back_hollow = Einbuchtung hinten
worksheet-name-back_swell = Wölbung hinten
worksheet-name-back_underarm_point = hinterer Achselpunkt
worksheet-name-back_wrist = Handgelenk hinten
worksheet-name-bust_point = Brustpunkt
worksheet-name-cap_top = höchster Punkt der Armkugel
worksheet-name-centre_hem = Saum an der Mitte
worksheet-name-centre_hip = Hüfte an der Mitte
worksheet-name-centre_neck = Halsausschnitt an der Mitte
worksheet-name-centre_waist = Taille an der Mitte
worksheet-name-crotch_point = Schrittpunkt
worksheet-name-front_crossing = Kreuzungspunkt vorn
worksheet-name-front_hollow = Einbuchtung vorn
worksheet-name-front_swell = Wölbung vorn
worksheet-name-front_underarm_point = vorderer Achselpunkt
worksheet-name-front_wrist = Handgelenk vorn
worksheet-name-neck_point = Halspunkt
worksheet-name-shoulder_tip = Schulterpunkt
worksheet-name-side_hem = Saum an der Seite
worksheet-name-side_hip = Hüfte an der Seite
worksheet-name-side_waist = Taille an der Seite
worksheet-name-underarm_point = Achselpunkt

# Anprobezugabe außerhalb der Nahtzugabe.
worksheet-allow_extra = Außerhalb davon { DAT($lines, with: "an") } noch { $width } Anprobezugabe geben.
