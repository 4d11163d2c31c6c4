# Sätze von kit/sewing/operations/fly_zip.py.

fly_zip-face = { ACC($facing) } rechts auf rechts auf { ACC($over) } stecken und { $allowance } von der Kante bis zum Ende der Öffnung steppen. Die Nahtzugabe auf die Hälfte zurückschneiden, zum Beleg bügeln und knapp auf dem Beleg absteppen; den Beleg nach innen wenden und bügeln.
fly_zip-press = { ACC($under) } nach innen umbügeln, { $out } außerhalb der Nahtlinie.
fly_zip-under = Die Bruchkante { GEN($under) } dicht neben die Zähnchen des geschlossenen Reißverschlusses von { $length } Länge, rechte Seite oben, legen, den Schieber { $top } unter der oberen Nahtlinie, den unteren Anschlag oberhalb des Öffnungsendes, und stecken.
fly_zip-under_flush = Die Bruchkante { GEN($under) } dicht neben die Zähnchen des geschlossenen Reißverschlusses von { $length } Länge, rechte Seite oben, legen, den Schieber an der oberen Nahtlinie, den unteren Anschlag oberhalb des Öffnungsendes, und stecken.
fly_zip-shield = { ACC($shield) } darunter feststecken, die Schnittkante auf gleicher Höhe mit der des Bandes.
fly_zip-stitch_under = Mit dem Reißverschlussfuß die Bruchkante { GEN($under) } knappkantig auf das Band steppen, durch alles, was darunterliegt.
fly_zip-close = Den Schlitz so schließen, wie er getragen wird: { ACC($over) } über den Reißverschluss legen, die Kante auf der Nahtlinie der anderen Seite, und zustecken oder zuheften.
fly_zip-away = Die Arbeit wenden und den Untertritt aus dem Weg klappen.
fly_zip-tape = Von innen das freie Band auf den Beleg legen und nur auf den Beleg steppen, in zwei Reihen: eine neben den Zähnchen, eine an der Bandkante.
fly_zip-curve = Auf der rechten Stoffseite den Bogen anzeichnen, { $lap } von der Kante, unten zur Naht am Ende der Öffnung gerundet. Von oben nach unten durch Vorderteil und Beleg steppen, am unteren Anschlag des Reißverschlusses vorbei und nie darüber.
fly_zip-bar = Am Fuß des Bogens quer einen Riegel nähen, dann Nadeln und Heftfäden herausnehmen.
fly_zip-bar_shield = Den Untertritt zurücklegen und sein unteres Ende von innen mit einem zweiten Riegel mitfassen.
fly_zip-why = Der Bogen hält den Beleg, nicht den Reißverschluss: der hängt am Beleg, liegt deshalb glatt und lässt sich ersetzen.
fly_zip-why_tape = Zuerst geschlossen, wie es getragen wird, fällt das freie Band von selbst an seinen Platz; getrennt gemessen klafft oder zieht der Übertritt.
