# Sätze von kit/sewing/operations/ties.py.

attach_handle-caught_place = Beide Enden { GEN($strip) } auf der rechten Stoffseite auf { ACC($run) } legen, offenes Ende an offene Kante, { $spots }.
attach_handle-in_hem_place = Beide Enden { GEN($strip) } innen auf { ACC($run) } legen, offenes Ende an offene Kante, { $spots }.
attach_handle-stitched_on_place = Beide Enden { GEN($strip) } innen { $lap } weit auf { ACC($run) } legen, { $spots }.
attach_handle-notches = Die Passzeichen zeigen beide Stellen.
attach_handle-twist = Darauf achten, dass nichts verdreht ist.
attach_handle-caught_sew = Die Enden in der Nahtzugabe festheften; die nächste Naht fasst sie mit. Die Schlaufe aus dem Weg halten.
attach_handle-in_hem_sew = Die Enden in der Nahtzugabe festheften. Den Saum darüberschlagen; wenn er gesteppt ist, { ACC($strip) } über den Saum hochklappen und dort noch einmal feststeppen.
attach_handle-stitched_on_sew = Jedes Ende in einem kleinen Kästchen mit Kreuz feststeppen.
attach_handle-why = Was Gewicht trägt, wird in eine Naht oder einen Saum gefasst und von einer zweiten Naht gehalten: eine allein reißt aus.
