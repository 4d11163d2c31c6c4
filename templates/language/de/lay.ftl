# Zuschneidepläne und wie viel Stoff zu kaufen ist (kit/cloth/lay.py, kit/cloth/yardage.py, kit/picture/lay.py).

lay-yardage_note = Jede Länge ist die eines Zuschneideplans mit den wahren Umrissen der Teile, alle im Fadenlauf und mit { $apart } Abstand, aufgerundet, wie Stoff verkauft wird.
# { $share } ist ein Prozentwert wie 5 %.
lay-yardage_shrinkage = Eingerechnet sind { $share } der Länge, um die der Stoff beim Waschen einläuft; vor dem Zuschneiden waschen und bügeln.
lay-yardage_unwashed = Für das Einlaufen ist nichts zugegeben; von Stoff, der einläuft, mehr kaufen und ihn vor dem Zuschneiden waschen.
lay-may_fold = { $sign } Diese Länge reicht auch bei gefaltetem Stoff.
lay-falls = Größe { $smaller } braucht mehr als { $larger }: Ihre Teile wurden ebenso oft ausgelegt, greifen aber nicht so eng ineinander.
lay-interfacing_pieced = Die Einlage dieser Teile wird in zwei Längen zugeschnitten, die sich { $overlap } überlappen: { $pieces }. In einer Länge braucht sie so viel, wie das Teil lang ist.

# Das Bild. { $width } und { $length } sind Längen wie 140 cm (55 Zoll).
lay-title = Zuschneideplan
lay-heading_main = Oberstoff { $width } breit, { $length } lang
lay-heading_lining = Futter { $width } breit, { $length } lang
lay-heading_interfacing = Einlage { $width } breit, { $length } lang
# Über jedem Abschnitt des Stoffes. { $length } ist die Länge dieses Abschnitts.
lay-flat_cloth = Offen ausgebreitet, rechte Stoffseite oben. Durch eine Lage schneiden.
lay-flat_interfacing = Offen ausgebreitet; Klebeseite, falls vorhanden, unten. Durch eine Lage schneiden.
lay-folded_cloth = Der Länge nach gefaltet, rechts auf rechts. Durch beide Lagen schneiden.
lay-folded_interfacing = Der Länge nach gefaltet. Durch beide Lagen schneiden.
lay-opened_cloth = Der Rest, { $length } lang, offen ausgebreitet, rechte Stoffseite oben. Durch eine Lage schneiden.
lay-opened_interfacing = Der Rest, { $length } lang, offen ausgebreitet; Klebeseite, falls vorhanden, unten. Durch eine Lage schneiden.
# Unter dem Bild.
lay-dashed = Gestrichelter Umriss: hier liegt das Schnittteil gewendet, bedruckte Seite unten; ein halbes wird um seine Bruchlinie gewendet.
# An den Kanten des Stoffes.
lay-fold = Stoffbruch
lay-selvedge = Webkante
lay-selvedges = beide Webkanten
lay-grain = Fadenlauf
lay-grain_nap = oben ist hier
# { $half } ist die halbe Stoffbreite.
lay-half_width = Hälfte: { $half }
# Auf einem Teil.
lay-piece_title = { $number } { $title }
lay-turned_over = gewendet
# { $count } Streifen liegen nebeneinander.
lay-strips = { $count ->
    [one] { $count } Streifen
   *[other] { $count } Streifen
}
# Für alle, die das Bild nicht sehen. { $heading } ist eine der Überschriften oben.
lay-alt = Zuschneideplan. { $heading }.
lay-alt_flat = Der Stoff ist offen ausgebreitet, eine Lage mit der rechten Stoffseite oben.
lay-alt_lengthwise = Der Stoff ist der Länge nach gefaltet, die Webkanten aufeinander.
lay-alt_part = Der Stoff ist im ersten Abschnitt der Länge nach gefaltet und dahinter offen ausgebreitet.
lay-alt_piece = { $count ->
    [one] Teil { $number }, { $title }, ist einmal aufgelegt.
   *[other] Teil { $number }, { $title }, ist für { $count } Stück aufgelegt.
}
lay-alt_fold = Teil { $number }, { $title }, liegt am Stoffbruch.
lay-alt_over = { $count ->
    [one] Ein Schnittteil ist gewendet.
   *[other] { $count } Schnittteile sind gewendet.
}
lay-alt_half = { $count ->
    [one] Von einem Teil ist das Schnittteil eine Hälfte und wird für die andere um seine Bruchlinie gewendet.
   *[other] Von { $count } Teilen ist das Schnittteil eine Hälfte und wird für die andere um seine Bruchlinie gewendet.
}
