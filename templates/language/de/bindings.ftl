# Sätze von kit/sewing/operations/bindings.py.

bind-trim = Die Nahtzugabe von { $trim } { DAT($edge, with: "an") } abschneiden; an ihre Stelle tritt die Einfassung.
bind-fold = { ACC($strip) } der Länge nach zur Hälfte falten und bügeln, die Längskanten bis zum Mittelbruch einbügeln und wieder aufklappen.
bind-fold_double = { ACC($strip) } der Länge nach links auf links zur Hälfte falten und bügeln, gefaltet lassen.
bind-pin = { ACC($strip) } auf der rechten Stoffseite offene Kante auf offene Kante auf { ACC($edge) } stecken. An Außenrundungen locker auflegen, an Innenrundungen leicht dehnen.
bind-ends_ring = Wo die Enden sich treffen, sie flach zusammennähen, bevor das letzte Stück gesteppt wird, oder ein Ende { $turned } einschlagen und das andere hineinlegen.
bind-ends_turned = An jedem Ende { $turned } einschlagen.
bind-ends_caught = Die Enden bis in die Nahtzugabe laufen lassen: eine spätere Naht fasst sie mit.
bind-sew = Im Abstand von { $finished } zur offenen Kante steppen.
bind-wrap = Den Streifen um die Kante nach innen legen und die offene Kante einschlagen, sodass die Bruchkante die Stiche gerade bedeckt.
bind-wrap_double = Die gefaltete Kante nach innen umlegen, sodass sie die Stiche gerade bedeckt.
bind-last_machine = Von der rechten Stoffseite im Nahtschatten steppen und dabei die untere Bruchkante mitfassen.
bind-last_hand = Die Bruchkante von Hand mit Staffierstichen an der Nahtlinie annähen.
bind-ties_out = { ACC($strip) } nach außen über die Einfassung legen und dort in einem kleinen Kästchen mit Kreuz feststeppen.
bind-why = Ein schräg geschnittener Streifen legt sich ohne Falten um die Rundung; viermal so breit zugeschnitten wie fertig, bedeckt er die Kante auf beiden Seiten und schließt die eigenen Kanten ein.
bind-why_double = Doppelt gelegt wird er sechsmal so breit zugeschnitten; er hält länger und ist bei dünnem Stoff einfacher, weil eine Bruchkante angenäht wird und nichts eingeschlagen werden muss.

bias_facing-fold = An einer Längskante { GEN($strip) } { $allowance } einschlagen und bügeln.
bias_facing-pin = Die andere Längskante rechts auf rechts auf { ACC($edge) } stecken.
bias_facing-sew = Im Abstand von { $allowance } zur Kante steppen.
bias_facing-trim = Nahtzugaben zurückschneiden und einschneiden.
bias_facing-turn = Den ganzen Streifen nach innen wenden und bügeln, die Naht genau an der Kante: innen ist er { $finished } breit.
bias_facing-stitch = Die Bruchkante knappkantig feststeppen oder von Hand mit Staffierstichen annähen.
bias_facing-why = Ganz nach innen gewendet ist der Streifen ein gleichmäßig breiter Beleg, der kein eigenes Schnittteil braucht.
