# Sätze von kit/sewing/operations/zips.py.

lapped_zip-press = { ACC($over) } an der Nahtlinie { $allowance } breit nach innen umbügeln. Gegenüber { ACC($under) } etwas außerhalb der Nahtlinie nach innen umbügeln.
lapped_zip-under = Die Bruchkante { GEN($under) } dicht neben die Zähnchen des geschlossenen Reißverschlusses von { $length } Länge legen, den Schieber { $top } unter der oberen Nahtlinie, und stecken.
lapped_zip-under_flush = Die Bruchkante { GEN($under) } dicht neben die Zähnchen des geschlossenen Reißverschlusses von { $length } Länge legen, den Schieber an der oberen Nahtlinie, und stecken.
lapped_zip-stitch_under = Mit dem Reißverschlussfuß die Bruchkante { GEN($under) } knappkantig auf das Band steppen.
lapped_zip-lay = { ACC($over) } über den Reißverschluss legen, die Bruchkante auf der Nahtlinie der anderen Seite, sodass die Zähnchen verdeckt sind; stecken oder heften.
lapped_zip-stitch_over = Von der rechten Stoffseite { $lap } neben der Bruchkante steppen: unterhalb des Reißverschlussendes quer, drehen und bis oben. Zum Vorbeinähen am Schieber den Reißverschluss öffnen.
lapped_zip-why = Der Übertritt verdeckt die Zähnchen; der untere Bruch liegt etwas weiter außen, damit der Übertritt ihn auch bei Zug noch bedeckt.

centred_zip-baste = { ACC($over) } rechts auf rechts auf { ACC($under) } stecken und die Öffnung { $allowance } von der Kante zuheften.
centred_zip-press = Nahtzugaben auseinanderbügeln.
centred_zip-lay = Den geschlossenen Reißverschluss, { $length } lang, mit der rechten Seite nach unten auf die Zugaben legen, die Zähnchen auf der Heftnaht, den Schieber { $top } unter der oberen Nahtlinie; die Bänder stecken oder heften.
centred_zip-lay_flush = Den geschlossenen Reißverschluss, { $length } lang, mit der rechten Seite nach unten auf die Zugaben legen, die Zähnchen auf der Heftnaht, den Schieber an der oberen Nahtlinie; die Bänder stecken oder heften.
centred_zip-stitch = Von der rechten Stoffseite mit dem Reißverschlussfuß { $lap } neben der Naht steppen: eine Seite hinunter, unterhalb des Reißverschlussendes quer und die andere Seite hinauf. Zum Vorbeinähen am Schieber den Reißverschluss öffnen.
centred_zip-open = Die Heftfäden herausziehen: die beiden Bruchkanten treffen sich über den Zähnchen.
centred_zip-why = Zuerst zugeheftet liegen beide Bruchkanten genau Kante an Kante über den Zähnchen, während der Reißverschluss eingenäht wird.
