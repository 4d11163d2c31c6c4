# ---- fit changes: what they are called

fit-lengthen_above_waist = Über der Taille verlängern
fit-lengthen_below_waist = Unter der Taille verlängern
fit-lengthen_above_hip = Über der Hüfte verlängern
fit-lengthen_above_hem = Über dem Saum verlängern
fit-lengthen_above_knee = Über dem Knie verlängern
fit-lengthen_below_knee = Unter dem Knie verlängern
fit-lengthen_above_elbow = Über dem Ellenbogen verlängern
fit-lengthen_below_elbow = Unter dem Ellenbogen verlängern
fit-shorten_above_waist = Über der Taille kürzen
fit-shorten_below_waist = Unter der Taille kürzen
fit-shorten_above_hip = Über der Hüfte kürzen
fit-shorten_above_hem = Über dem Saum kürzen
fit-shorten_above_knee = Über dem Knie kürzen
fit-shorten_below_knee = Unter dem Knie kürzen
fit-shorten_above_elbow = Über dem Ellenbogen kürzen
fit-shorten_below_elbow = Unter dem Ellenbogen kürzen
fit-long_rise = Hoher Leib
fit-short_rise = Kurzer Leib
fit-full_bust = Volle Brust
fit-small_bust = Kleine Brust
fit-full_seat = Volles Gesäß
fit-flat_seat = Flaches Gesäß
fit-sway_back = Hohlkreuz
fit-round_back = Runder Rücken
fit-broad_shoulder = Breite Schulter
fit-narrow_shoulder = Schmale Schulter
fit-sloping_shoulder = Abfallende Schulter
fit-square_shoulder = Gerade Schulter
fit-forward_shoulder = Vorgeneigte Schulter
fit-full_upper_arm = Kräftiger Oberarm
fit-let_out_sides = Seitennähte auslassen
fit-take_in_sides = Seitennähte einnehmen
fit-lower_underarm = Armloch tiefer setzen
fit-raise_underarm = Armloch höher setzen

# ---- how each is done by hand, $amount being how much

fit-lengthen_text = Alle Teile, die hier zusammengenäht werden, auf der Linie zum Verlängern quer durchschneiden und um { $amount } auseinanderschieben. Der Fadenlauf bleibt eine Linie. Bruch und gerade Nähte mit dem Lineal von Ende zu Ende nachzeichnen, gebogene Nähte glatt über die Lücke.
fit-shorten_text = In alle Teile, die hier zusammengenäht werden, auf der Linie zum Kürzen quer eine Falte legen, die insgesamt { $amount } wegnimmt. Der Fadenlauf bleibt eine Linie. Bruch und gerade Nähte mit dem Lineal von Ende zu Ende nachzeichnen, gebogene Nähte glatt über die Falte.
fit-long_rise_text = Vorder- und Rückenteil zwischen Taille und Hüfte auf der Linie zum Verlängern quer durchschneiden und um { $amount } auseinanderschieben. Schrittnaht und Seitennaht glatt über die Lücke zeichnen.
fit-short_rise_text = In Vorder- und Rückenteil zwischen Taille und Hüfte auf der Linie zum Kürzen quer eine Falte legen, die { $amount } wegnimmt. Schrittnaht und Seitennaht glatt über die Falte zeichnen.
fit-full_bust_text = Das Vorderteil von der Unterkante bis zum Brustpunkt und weiter zum Armloch aufschneiden (ohne Brustabnäher bis zur Schultermitte). Dort nicht durchschneiden: Das ist der Drehpunkt. Einen Brustabnäher bis zum Brustpunkt aufschneiden. Den Schnitt am Brustpunkt um { $known ->
    [yes] die Hälfte von { $amount }
   *[no] den halben Unterschied
    } öffnen; darunter bleibt er gleich breit, der Brustabnäher wird von selbst breiter. Die Mitte unter der Brust quer durchschneiden und senken, bis die Unterkanten auf einer Höhe liegen. Die Abnäher neu zum Brustpunkt zeichnen.
fit-small_bust_text = Das Vorderteil von der Unterkante bis zum Brustpunkt und weiter zum Armloch aufschneiden (ohne Brustabnäher bis zur Schultermitte), einen Brustabnäher bis zum Brustpunkt. Den Schnitt am Brustpunkt um { $known ->
    [yes] die Hälfte von { $amount }
   *[no] den halben Unterschied
    } übereinanderlegen, darunter ebenso breit; der Brustabnäher wird von selbst schmaler. Die Mitte unter der Brust quer durchschneiden und übereinanderlegen, bis die Unterkanten auf einer Höhe liegen. Die Abnäher neu zum Brustpunkt zeichnen.
fit-full_seat_text = Das Rückenteil über der stärksten Stelle des Gesäßes von der Mitte zur Seite aufschneiden und an der Mitte um { $amount } öffnen; die Seite ist der Drehpunkt. Die Mitte glatt zeichnen, am Bruch gerade; was die Taille gewinnt, kommt in den Abnäher neben der Mitte.
fit-flat_seat_text = Über der stärksten Stelle des Gesäßes einen Keil aus dem Rückenteil falten: { $amount } an der Mitte, nichts an der Seite. Die Mitte glatt zeichnen, am Bruch gerade; was die Taille verliert, kommt aus dem Abnäher neben der Mitte.
fit-sway_back_text = Im Rücken an der Mitte der Taille { $amount } wegnehmen, zur Seitennaht auf nichts auslaufend: die Taillenkante dort in das Teil hinein zeichnen oder, wenn das Teil unter der Taille weitergeht, einen Keil ausfalten; die Mitte bleibt gerade. Abnäher behalten ihre Breite.
fit-round_back_text = Das Rückenteil zwischen den Schulterblättern von der Mitte zum Armloch aufschneiden und an der Mitte um { $amount } öffnen; das Armloch ist der Drehpunkt. Die Mitte gerade nach oben zeichnen. Was der Hals gewinnt, kommt in einen Halsabnäher oder wird eingehalten.
fit-broad_shoulder_text = Vorder- und Rückenteil gleich: von der Schulter zum Armloch aufschneiden und an der Schulter um { $amount } öffnen; das Armloch ist der Drehpunkt und behält seine Länge. Die Schulter gerade vom Hals zur neuen Spitze zeichnen.
fit-narrow_shoulder_text = Vorder- und Rückenteil gleich: von der Schulter zum Armloch aufschneiden und an der Schulter um { $amount } übereinanderlegen; das Armloch ist der Drehpunkt und behält seine Länge. Die Schulter gerade vom Hals zur neuen Spitze zeichnen.
fit-sloping_shoulder_text = Das Armloch an Vorder- und Rückenteil unverändert um { $amount } nach unten schieben und die Schulter vom Hals zur neuen Spitze zeichnen. Der Armlochpunkt sinkt um ebenso viel.
fit-sloping_shoulder_sleeve = Der Ärmel passt weiter.
fit-square_shoulder_text = Das Armloch an Vorder- und Rückenteil unverändert um { $amount } nach oben schieben und die Schulter vom Hals zur neuen Spitze zeichnen. Der Armlochpunkt steigt um ebenso viel.
fit-square_shoulder_sleeve = Der Ärmel passt weiter.
fit-forward_shoulder_text = Am Vorderteil an der Schulterspitze { $amount } wegnehmen, zum Hals auf nichts auslaufend, und am Rückenteil ebenso viel zugeben.
fit-forward_shoulder_sleeve = Am Ärmel die Marke für die Schulternaht um ebenso viel nach vorn setzen.
fit-full_upper_arm_text = Den Ärmel der Länge nach in der Mitte und quer am Oberarm aufschneiden. Am Oberarm insgesamt um { $amount } öffnen; Handgelenk, Kugelspitze und beide Armlochpunkte sind Drehpunkte. Kugel, Ärmelnähte und Handgelenk behalten ihre Länge, die Kugel wird flacher.
fit-let_out_sides_text = Die Seitennähte von Vorder- und Rückenteil in ganzer Länge weiter außen zeichnen, jede um ein Viertel { $known ->
    [yes] von { $amount }
   *[no] des Unterschieds
    }.
fit-let_out_sides_sleeve = Den Ärmel an den Ärmelnähten erweitern, bis die Kugel wieder ins Armloch passt.
fit-take_in_sides_text = Die Seitennähte von Vorder- und Rückenteil in ganzer Länge weiter innen zeichnen, jede um ein Viertel { $known ->
    [yes] von { $amount }
   *[no] des Unterschieds
    }.
fit-take_in_sides_sleeve = Den Ärmel an den Ärmelnähten verschmälern, bis die Kugel wieder ins Armloch passt.
fit-lower_underarm_text = Den Armlochpunkt an den Seitennähten von Vorder- und Rückenteil um { $amount } tiefer markieren und das Armloch dorthin zeichnen.
fit-lower_underarm_sleeve = Die Armlochpunkte des Ärmels auf den Ärmelnähten senken, bis die Kugel wieder ins Armloch passt.
fit-raise_underarm_text = Den Armlochpunkt an den Seitennähten von Vorder- und Rückenteil um { $amount } höher markieren und das Armloch dorthin zeichnen.
fit-raise_underarm_sleeve = Die Armlochpunkte des Ärmels auf den Ärmelnähten heben, bis die Kugel wieder ins Armloch passt; bei einer flachen Kugel rücken sie auch nach innen.

# ---- and what stands beside them

fit-the_difference = den Unterschied
fit-part_1 = { $name }
fit-part_2 = { $name }, je Seite die Hälfte
fit-part_4 = { $name }, je Naht ein Viertel
fit-lacking = { $piece } hat nicht die Kanten und Linien, nach denen diese Änderung geht.
fit-lacking_do = Eine andere Änderung wählen oder sie hinter den Schritt setzen, der sie zeichnet.
fit-too_short = { $piece } lässt sich dort nicht um { $amount } kürzen.
fit-too_much = { $amount } ist zu viel für { $piece }.
fit-dart = { $dart } ({ $piece }) kann nicht so viel aufnehmen.
fit-bust_far = das Vorderteil lässt sich an der Brust nicht um { $amount } ändern.
fit-arm_far = der Ärmel lässt sich am Oberarm nicht um { $amount } weiten.
fit-no_piece = es gibt kein Vorder- oder Rückenteil, an dem diese Änderung ginge.
fit-no_level = kein Teil hat die beiden Höhen des Körpers, zwischen denen geschnitten würde.
fit-too_far = hier geht es nur bis { $most }; verlangt wird mehr: { $amount }.
fit-too_far_do = Höchstens { $most } einstellen und den Rest bei der Anprobe abstecken.
fit-no_sleeve = es gibt keinen eingesetzten Ärmel.

fit-picture = { $title }: { $pieces }, vorher und nachher.
