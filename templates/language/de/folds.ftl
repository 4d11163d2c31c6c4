# Sätze von kit/sewing/operations/folds.py.

dart-spared = Diese Figur braucht { DAT($pieces, with: "an") } keinen Abnäher. Weiter mit dem nächsten Schritt.
dart-fold = Jeden Abnäher { GEN($pieces) } an der Mittellinie rechts auf rechts falten, sodass seine beiden Nahtlinien aufeinanderliegen, und stecken.
dart-fold_one = Den Abnäher { GEN($pieces) } an der Mittellinie rechts auf rechts falten, sodass seine beiden Nahtlinien aufeinanderliegen, und stecken.
dart-sew = { ACC($dart) } { DAT($edge, with: "von") } bis zur Spitze steppen, { $depth } lang; die Naht beginnt { $intake } neben dem Bruch, die letzten Stiche laufen genau auf dem Bruch aus.
dart-tie = An der Spitze nicht verriegeln: lange Fadenenden lassen und verknoten.
dart-press = Den Abnäher erst flach bügeln, wie er genäht ist, dann über einem runden Bügelkissen in Richtung { GEN($toward) }, ohne einen Falz über die Spitze hinaus.
dart-press_of = Die Abnäher { DAT($edge, with: "an") } erst flach bügeln, wie sie genäht sind, dann über einem runden Bügelkissen in Richtung { GEN($toward) }, ohne einen Falz über die Spitze hinaus.
dart-why = Ein Abnäher wölbt den flachen Stoff: was er an der Kante aufnimmt, ist das, was der Körper dort schmaler ist.
dart-why_point = Läuft die Naht am Bruch entlang aus, endet sie im Nichts, und an der Spitze bildet sich keine Beule.

pleat-fold = { ACC($pleat) } { GEN($pieces) } auf der rechten Stoffseite an der Bruchlinie falten; Falteninhalt { $intake }.
pleat-lay = Die beiden Linien aufeinanderlegen, die Falte in Richtung { GEN($toward) } legen und stecken.
pleat-baste = Innerhalb der Nahtzugabe { GEN($edge) } quer über die Falte heften.
pleat-baste_both = Innerhalb der Nahtzugaben { GEN($edge) } und { GEN($far) } quer über die Falte heften.
pleat-press = Den Bruch unter einem Bügeltuch leicht bügeln, so weit er scharf bleiben soll.
pleat-why = Festgeheftet kann sich eine Falte nicht verschieben, während die Naht genäht wird, die sie hält.

tuck-fold = { ACC($pleat) } { GEN($pieces) } an der Mittellinie links auf links falten, sodass die beiden Linien aufeinanderliegen, und stecken.
tuck-sew = Auf der Linie steppen, { $half } neben dem Bruch.
tuck-sew_part = Auf der Linie steppen, { $half } neben dem Bruch, { DAT($edge, with: "von") } aus { $sewn } weit. Die Fäden auf die linke Stoffseite ziehen und verknoten.
tuck-press = Die Biese in Richtung { GEN($toward) } bügeln.
tuck-why = Eine Biese nimmt den Stoff auf, so weit sie genäht ist, und gibt ihn darunter frei.
