# Sätze von kit/sewing/operations/preparing.py.

gather-sew = { DAT($edge, with: "an") } mit dem längsten Stich zwei Reihen nähen, { $apart } auseinander, beiderseits der Nahtlinie. Lange Fadenenden lassen und nicht verriegeln.
gather-sew_more = { DAT($edge, with: "an") } mit dem längsten Stich { $rows } Reihen nähen, { $apart } auseinander. Lange Fadenenden lassen und nicht verriegeln.
gather-mark = { DAT($edge, with: "an") } und an der Kante, an die genäht wird, die Viertel markieren.
gather-draw = Die Unterfäden von beiden Enden her anziehen, bis die Kante { $to } statt { $full } misst, und um eine Stecknadel wickeln.
gather-draw_to_fit = Die Unterfäden von beiden Enden her anziehen, bis die Kante auf { ACC($fit) } passt: { $to } statt { $full }. Um eine Stecknadel wickeln.
gather-spread = Die Kräuselfältchen zwischen den Markierungen gleichmäßig verteilen.
gather-why = Zwei Reihen legen die Fältchen nebeneinander; bei nur einer Reihe kippen sie um.
gather-why_quarters = Markierte Viertel halten die Mehrweite dort, wo der Entwurf sie haben will.

ease_stitch-sew = { DAT($edge, with: "an") } { $distance } außerhalb der Nahtlinie einen Einhaltefaden mit langen Stichen nähen und lange Fadenenden lassen.
ease_stitch-sew_two = In der Nahtzugabe { GEN($edge) } zwei Einhaltefäden mit langen Stichen nähen, den ersten { $distance } außerhalb der Nahtlinie, und lange Fadenenden lassen.
ease_stitch-draw = Den Unterfaden anziehen, bis die Kante um { $less } kürzer und noch { $to } lang ist.
ease_stitch-draw_to_fit = Den Unterfaden anziehen, bis die Kante um { $less } kürzer und noch { $to } lang ist: so passt sie auf { ACC($fit) }.
ease_stitch-draw_later = Den Unterfaden ein wenig anziehen, bis sich die Kante zu wölben beginnt.
ease_stitch-smooth = Die Mehrweite mit den Fingern verteilen, bis kein Fältchen zu sehen ist, und mit Dampf einbügeln.
ease_stitch-why = Eine längere Kante, ohne Fältchen eingehalten, gibt dem Körper Raum: über der Schulter, am Ellbogen, am Gesäß.

baste-sew = { ACC($edge) } durch alle Lagen heften, { $distance } außerhalb der Nahtlinie.
baste-sew_on_line = { ACC($edge) } durch alle Lagen auf der Nahtlinie heften, mit Garn in einer anderen Farbe.
baste-sew_together = { ACC($edge) } rechts auf rechts zusammenstecken und auf der Nahtlinie heften, mit Garn in einer anderen Farbe.
baste-later = Diese Heftnaht kommt wieder heraus. Beginnt die Naht links auf links oder mit einem Umschlag, dann vor der ersten Naht; sonst, wenn die Naht genäht ist, knapp neben den Heftstichen und nicht durch sie.
baste-why = Lange Stiche halten die Lagen dort, wo sie sich zwischen Stecknadeln verschieben würden, und lassen sich leicht herausziehen.

remove_basting-pull = Die Heftfäden { DAT($edge, with: "an") } alle paar Stiche durchschneiden und herausziehen.
