# Sätze von kit/sewing/operations/enclosed.py.

mock_french_seam-sew = Im Abstand von { $allowance } zur Kante steppen.
mock_french_seam-turn = Die offene Kante jeder Nahtzugabe { $turn } zur anderen hin einschlagen und bügeln, sodass beide Bruchkanten aufeinanderliegen.
mock_french_seam-stitch = Die Bruchkanten knappkantig aufeinandersteppen.
mock_french_seam-why = Innen sieht sie aus wie eine französische Naht, wird aber wie eine einfache Naht auf der Nahtlinie genäht und eignet sich darum auch für Rundungen.

flat_felled_seam-sew = Im Abstand von { $allowance } zur Kante steppen. Nahtzugaben zusammen in Richtung { GEN($under) } bügeln, die { GEN($lapping) } obenauf.
flat_felled_seam-trim = Nur die untere Nahtzugabe, die { GEN($under) }, auf { $trim } zurückschneiden.
flat_felled_seam-trim_same_piece = Nur die untere Nahtzugabe auf { $trim } zurückschneiden, auf der Seite { $under_side }.
flat_felled_seam-fold = Die Kante der anderen Nahtzugabe, der { GEN($lapping) }, um die zurückgeschnittene schlagen, sodass { $width } Breite entstehen, und bügeln.
flat_felled_seam-fold_same_piece = Die Kante der anderen Nahtzugabe, auf der Seite { $lapping_side }, um die zurückgeschnittene schlagen, sodass { $width } Breite entstehen, und bügeln.
flat_felled_seam-lay = Den Umschlag flach auf { ACC($under) } legen, sodass keine offene Kante zu sehen ist, und stecken.
flat_felled_seam-lay_same_piece = Den Umschlag flach auf die andere Seite, { $under_side }, legen, sodass keine offene Kante zu sehen ist, und stecken.
flat_felled_seam-stitch = { $row } neben der Bruchkante durch alle Lagen feststeppen.
flat_felled_seam-why = Eine Kappnaht liegt flach, zeigt auf keiner Seite offene Kanten und wird von zwei Nähten gehalten: die haltbarste Naht für Arbeitskleidung und Hemden.
flat_felled_seam-why_trim = Eine Nahtzugabe wird zurückgeschnitten, damit sich die andere ohne Wulst darumlegt.

lapped_seam-turn = { ACC($edge) } { $allowance } bis zur Nahtlinie nach innen einschlagen und bügeln.
lapped_seam-lay = Die Bruchkante auf der rechten Stoffseite { GEN($other) } an die Nahtlinie legen und stecken.
lapped_seam-lay_raw = { ACC($edge) } auf die rechte Stoffseite { GEN($other) } legen, sodass beide Nahtlinien aufeinanderliegen, und stecken.
lapped_seam-stitch = { $row } neben der Bruchkante durch alle Lagen steppen.
lapped_seam-stitch_raw = { $row } neben der oberen offenen Kante steppen, dann ebenso weit neben der unteren.
lapped_seam-finish = Die offenen Kanten innen { $finish }.
lapped_seam-why = Eine aufgesteppte Naht wird von der rechten Stoffseite genäht; so ist genau zu sehen, wo Ecken und Rundungen zu liegen kommen.
