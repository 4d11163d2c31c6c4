# Sätze von kit/sewing/operations/tower_plackets.py.

tower_placket-mark = { ACC($slit) } auf der linken Stoffseite samt seinem Ende anzeichnen, { $long } lang. Noch nicht einschneiden. { DAT($around, with: "an") } { $allowance } nach innen bügeln, dann den Besatz der Länge nach links auf links zur Hälfte falten und bügeln.
tower_placket-reinforce = Mit kurzen Stichen ein schmales Kästchen um den Schlitz steppen: { DAT($edge, with: "von") } aus { $half } neben der Linie bis zu ihrem Ende, gerade hinüber und { $half } auf der anderen Seite zurück.
tower_placket-under = { ACC($strip) } mit der rechten Seite auf die linke Stoffseite stecken, an die Seite des Schlitzes, die unten liegen wird, und { $allowance } von der Streifenkante auf der Linie des Kästchens bis zur Ecke steppen.
tower_placket-cut = Mit einer kleinen Schere in der Mitte des Kästchens bis { $before } vor sein Ende einschneiden, dann schräg genau in beide Ecken, bis an die Stiche und nicht hindurch: am Ende bleibt ein kleines Dreieck.
tower_placket-pin = Den Streifen auf die rechte Seite bügeln, die freie Kante { $allowance } so einschlagen, dass sie die Stiche gerade bedeckt, und bis zum Ende des Schlitzes knappkantig aufsteppen: er ist { $wide } breit.
tower_placket-sew = { ACC($tower) } mit der rechten Seite auf die linke Stoffseite an die andere Seite des Schlitzes stecken und { $allowance } von der Kante bis zur Ecke des Kästchens steppen.
tower_placket-lay = Den Besatz durch den Schlitz auf die rechte Seite ziehen und im Bruch falten: er liegt über dem Streifen, seine umgebügelte Kante bedeckt die Stiche. Das Dreieck darunter nach oben legen und stecken.
tower_placket-across = Den Besatz von der Unterkante an der umgebügelten Seite hinauf, um die Spitze und am Ende des Schlitzes quer hinüber knappkantig aufsteppen, Dreieck und Streifen mitgefasst; unterhalb davon bleibt der Bruch frei.
tower_placket-why = Die Quernaht hält Dreieck, Streifen und Besatz genau dort zusammen, wo der Schlitz ausreißen würde; bis in die Ecken eingeschnitten, wendet sich der Besatz flach.
