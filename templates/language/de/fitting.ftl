# Was eine Anprobe geändert hat, in Sätzen und im Bild, das die Schnittzeichnung davor und danach übereinanderlegt.

# { $name } ist ein Parameter, wie die Lektion ihn nennt; { $before } und { $after } sind Längen, Anteile oder ganze Zahlen.
fitting-changed = { $name } von { $before } auf { $after }.

# Auf den Nahtlinien hat sich nichts bewegt.
fitting-no_line_moves = Keine Nahtlinie verschiebt sich.
fitting-new_piece = { $piece }: dieses Teil ist neu.
fitting-gone_piece = { $piece }: dieses Teil wird nicht mehr gebraucht.
fitting-hardly = { $piece }: die Linien verschieben sich um weniger als einen Millimeter.
fitting-darts = { $piece }: die Abnäher oder Falten liegen anders.
fitting-meets_elsewhere = { $piece }: die Linien bleiben, treffen sich aber an anderer Stelle.

# Wie sich eine Kante verschoben hat. { $way } ist up, down, out (mehr Stoff) oder in; { $at } und { $to } sind die
# Nachbarkanten an ihren Enden.
fitting-all_along =
    { $way ->
        [up] { $piece }: { NOM($edge) } auf ganzer Länge um { $size } nach oben verlegt.
        [down] { $piece }: { NOM($edge) } auf ganzer Länge um { $size } nach unten verlegt.
        [out] { $piece }: { NOM($edge) } auf ganzer Länge um { $size } nach außen verlegt.
       *[in] { $piece }: { NOM($edge) } auf ganzer Länge um { $size } nach innen verlegt.
    }
fitting-to_nothing =
    { $way ->
        [up] { $piece }: { NOM($edge) } { DAT($at, with: "an") } um { $size } nach oben verlegt, { DAT($to, with: "zu") } hin auslaufend.
        [down] { $piece }: { NOM($edge) } { DAT($at, with: "an") } um { $size } nach unten verlegt, { DAT($to, with: "zu") } hin auslaufend.
        [out] { $piece }: { NOM($edge) } { DAT($at, with: "an") } um { $size } nach außen verlegt, { DAT($to, with: "zu") } hin auslaufend.
       *[in] { $piece }: { NOM($edge) } { DAT($at, with: "an") } um { $size } nach innen verlegt, { DAT($to, with: "zu") } hin auslaufend.
    }
fitting-middle =
    { $way ->
        [up] { $piece }: { NOM($edge) } zwischen den Enden um bis zu { $size } nach oben verlegt.
        [down] { $piece }: { NOM($edge) } zwischen den Enden um bis zu { $size } nach unten verlegt.
        [out] { $piece }: { NOM($edge) } zwischen den Enden um bis zu { $size } nach außen verlegt.
       *[in] { $piece }: { NOM($edge) } zwischen den Enden um bis zu { $size } nach innen verlegt.
    }
# Zwei Enden, die sich in dieselbe Richtung verschieben, aber verschieden weit.
fitting-unequal =
    { $way ->
        [up] { $piece }: { NOM($edge) } { DAT($at, with: "an") } um { $size } und { DAT($to, with: "an") } um { $other } nach oben verlegt.
        [down] { $piece }: { NOM($edge) } { DAT($at, with: "an") } um { $size } und { DAT($to, with: "an") } um { $other } nach unten verlegt.
        [out] { $piece }: { NOM($edge) } { DAT($at, with: "an") } um { $size } und { DAT($to, with: "an") } um { $other } nach außen verlegt.
       *[in] { $piece }: { NOM($edge) } { DAT($at, with: "an") } um { $size } und { DAT($to, with: "an") } um { $other } nach innen verlegt.
    }
# Zwei Enden, die sich in verschiedene Richtungen verschieben: ein Satz für jedes.
fitting-one_end =
    { $way ->
        [up] { $piece }: { NOM($edge) } { DAT($at, with: "an") } um { $size } nach oben verlegt.
        [down] { $piece }: { NOM($edge) } { DAT($at, with: "an") } um { $size } nach unten verlegt.
        [out] { $piece }: { NOM($edge) } { DAT($at, with: "an") } um { $size } nach außen verlegt.
       *[in] { $piece }: { NOM($edge) } { DAT($at, with: "an") } um { $size } nach innen verlegt.
    }

# Das Bild. { $titles } ist eine Aufzählung von Kanten, { $words } die Sätze darüber.
fitting-title = { $piece }, vorher und nachher
fitting-alt = { $piece } vor der Anprobe, gestrichelt, und danach, übereinander gezeichnet. Was sich verschoben hat, ist dick gezeichnet. { $words }
# Dasselbe Bild, während ein Wert bewegt wird.
fitting-alt_moving = { $piece } vor der Anprobe, gestrichelt, und wie es jetzt ist, übereinander gezeichnet.
