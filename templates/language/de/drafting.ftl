# Ablehnungen von Kurven und Bögen, die sich nicht zeichnen lassen. $line und $other sind Namen von Linien, $way eines der
# word-way_...; Längen bringen ihre Einheit mit, Winkel sind in Grad.
word-way_up = nach oben
word-way_down = nach unten
word-way_out = nach außen zur Seite
word-way_in = nach innen zur Mitte

drafting-neither_side = an der Linie „{ $line }“ kann keine Kurve { $toward } abgehen oder ankommen.
drafting-neither_side_do = Dort geht es { $one } oder { $other }: eines davon angeben.
drafting-turns_back = die Kurve ginge { $way } los und liefe zurück: an einem Ende weicht sie { $off }° von der geraden Verbindung zum anderen ab, höchstens { $most }° gehen.
drafting-turns_back_do = Die Enden so verlegen, dass jedes mit weniger Drehung erreicht wird, sie mit toward= zur anderen Seite losgehen lassen oder mit arc einen Kreisbogen zeichnen.
drafting-doubles_back = die Kurve vom Ende der Linie „{ $line }“ zur Linie „{ $other }“, die { $way } losgeht, liefe in sich zurück.
drafting-doubles_back_do = Die Stelle verlegen, an der sie auf „{ $other }“ trifft, „{ $line }“ kürzen oder mit toward= sagen, in welche Richtung sie losgeht.
drafting-arc_angle = ein Bogen kann nicht über { $angle }° gehen.
drafting-arc_angle_do = Einen Winkel über null angeben, höchstens eine volle Drehung von 360°; zwischen zwei Punkten weniger.
drafting-arc_length = ein Bogen von { $length } liegt nicht auf einem Kreis, der rundum { $most } misst.
drafting-arc_length_do = Eine Länge über null und höchstens den ganzen Kreis angeben, oder einen größeren Radius.
drafting-arc_radius = ein Bogen braucht einen Radius über null, und dieser ist { $radius }.
drafting-arc_radius_do = Das Maß prüfen, aus dem der Radius kommt.
drafting-arc_misses = der auf { $radius } gestellte Zirkel reicht nicht zum anderen Ende: es liegt { $far } vom Mittelpunkt.
drafting-arc_misses_do = Ende oder Mittelpunkt verlegen, oder mit angle= oder length= sagen, wie weit der Bogen geht.
drafting-arc_no_way = ein Bogen zwischen zwei Punkten braucht zwei verschiedene.
drafting-arc_no_way_do = Einen davon verlegen oder sagen, wo der Mittelpunkt liegt.
drafting-arc_in_line = die drei Punkte liegen auf einer Geraden, oder zwei von ihnen am selben Ort.
drafting-arc_in_line_do = Den mittleren zur Seite rücken.
drafting-arc_short = ein Radius von { $radius } ist zu klein, um { $chord } zu überspannen.
drafting-arc_short_do = Mindestens { $least } nehmen oder die Enden näher zusammenrücken.

# $run und $edge sind Kanten, $piece der Titel eines Teils.
drafting-facing_end = ein Beleg von { $depth } Tiefe passt an einem Ende nicht: dort steht die Kante „{ $edge }“ des Teils „{ $piece }“, { $long } lang, in { $angle }° zur Kante „{ $run }“, und die Außenkante des Belegs trifft nie auf sie.
drafting-facing_end_do = Den Beleg schmaler machen, ihn entlang „{ $edge }“ weiterführen oder die beiden Kanten näher am rechten Winkel zeichnen.
