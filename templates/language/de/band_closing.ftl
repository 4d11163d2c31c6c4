# Sätze von kit/sewing/operations/band_closing.py.

close_band-turn = { $edge } { $allowance } nach innen einschlagen und bügeln.
close_band-pin = Die Bruchkante über die Naht legen, gerade über die Stiche hinaus, und stecken oder heften.
close_band-edgestitch = Von der rechten Stoffseite knappkantig durch alle Lagen steppen und dabei die untere Bruchkante mitfassen.
close_band-groove = Von der rechten Stoffseite im Nahtschatten steppen und dabei die untere Bruchkante mitfassen.
close_band-hand = Die Bruchkante von Hand mit Staffierstichen an der Nahtlinie annähen.
close_band-why = Ein klein wenig über die Naht gelegt, wird die Bruchkante von einer Naht von der anderen Seite sicher mitgefasst.
