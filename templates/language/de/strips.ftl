# Sätze von kit/sewing/operations/strips.py.

fold_strip-half = { ACC($strip) } der Länge nach in der Mitte links auf links falten, bügeln und wieder aufklappen.
fold_strip-ends = An jeder kurzen Seite, die zu sehen sein wird, { $ends } einschlagen und bügeln.
fold_strip-quarter = Beide Längskanten bis zum Mittelfalz einschlagen und den Streifen am Mittelfalz wieder zusammenlegen: fertig { $width } breit.
fold_strip-sew = Beide Längskanten knappkantig steppen, { $edgestitch } von der Kante.
fold_strip-sew_one = Die offene Längskante, wo die beiden Brüche aufeinandertreffen, knappkantig steppen, { $edgestitch } von der Kante.
fold_strip-count = { $count } gleiche Stücke arbeiten.

turn_strip-fold = { ACC($strip) } der Länge nach rechts auf rechts falten und stecken.
turn_strip-sew = Im Abstand von { $allowance } zu den offenen Längskanten steppen.
turn_strip-slant = An einem Ende schräg quer weitersteppen, sodass der Bruch { $slant } länger ist als die genähte Kante. Das andere Ende bleibt zum Wenden offen.
turn_strip-slant_trim = An der Schräge die Zugabe zurückschneiden und die Ecken abschrägen.
turn_strip-turn = Auf rechts wenden und bügeln: { $width } breit.
turn_strip-ends = An jeder kurzen Seite, die zu sehen sein wird, { $ends } nach innen schieben und zusteppen.
turn_strip-stitch_one = Die genähte Kante knappkantig steppen, { $edgestitch } von der Kante.
turn_strip-stitch_both = Beide Längskanten knappkantig steppen, { $edgestitch } von der Kante.
turn_strip-count = { $count } gleiche Stücke arbeiten.

hem_strip-turn = Beide Längskanten { GEN($strip) } zweimal je { $turn } zur linken Seite umbügeln: fertig { $width } breit.
hem_strip-sew = Dicht neben den inneren Bruchkanten steppen.
hem_strip-ends_both = Beide kurzen Enden ebenso umbügeln, die Ecken flach gefaltet, und quer darüber steppen.
hem_strip-ends_one = Ein kurzes Ende ebenso umbügeln, die Ecken flach gefaltet, und quer darüber steppen; das andere bleibt unversäubert, bis eine Naht es mitfasst.
hem_strip-count = { $count } gleiche Stücke arbeiten.
hem_strip-why = In dünnem Stoff gibt eine einzelne Lage einen weichen Knoten; zweimal eingeschlagen kann ihre Kante nicht ausfransen.

attach_strip-stitched_on-place_start = Das Ende { GEN($strip) } auf der linken Stoffseite { $lap } weit auf { ACC($run) } legen, { $at }.
attach_strip-stitched_on-place_end = Das Ende { GEN($strip) } auf der linken Stoffseite { $lap } weit auf { ACC($run) } legen, { $at }.
attach_strip-stitched_on-place_along = Das Ende { GEN($strip) } auf der linken Stoffseite { $lap } weit auf { ACC($run) } legen, { $at }.
attach_strip-stitched_on-place_mark = Das Ende { GEN($strip) } auf der linken Stoffseite { $lap } weit auf { ACC($run) } legen, an der Markierung { GEN($mark) }.
attach_strip-stitched_on-sew = In einem kleinen Kästchen mit Kreuz feststeppen.

attach_strip-caught-place_start = { ACC($strip) } auf der rechten Stoffseite an { ACC($run) } legen, { $at }, offenes Ende an offene Kante.
attach_strip-caught-place_end = { ACC($strip) } auf der rechten Stoffseite an { ACC($run) } legen, { $at }, offenes Ende an offene Kante.
attach_strip-caught-place_along = { ACC($strip) } auf der rechten Stoffseite auf { ACC($run) } legen, { $at }, offenes Ende an offene Kante.
attach_strip-caught-place_mark = { ACC($strip) } auf der rechten Stoffseite auf { ACC($run) } legen, an der Markierung { GEN($mark) }, offenes Ende an offene Kante.
attach_strip-caught-sew = In der Nahtzugabe festheften; die nächste Naht fasst das Ende mit. Das lose Ende aus dem Weg halten.
attach_strip-caught-sew_edge = { $row } neben der offenen Kante festheften; die nächste Naht fasst das Ende mit. Das lose Ende aus dem Weg halten.
