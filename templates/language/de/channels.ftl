# Sätze von kit/sewing/operations/channels.py.

channel-mark = Auf der rechten Stoffseite { DAT($edge, with: "an") } { $distance } neben der Kante eine Linie anzeichnen, { $depth } darunter eine zweite. Die Lagen zusammenstecken.
channel-first = Auf der oberen Linie durch alle Lagen steppen.
channel-second = Auf der unteren Linie, { $total } neben der Kante, ebenfalls durch alle Lagen steppen.
channel-second_gap = Auf der unteren Linie, { $total } neben der Kante, ebenfalls durch alle Lagen steppen, dabei { DAT($where, with: "an") } zum Einziehen { $gap } offen lassen. An beiden Enden der Öffnung verriegeln.
channel-why = Die beiden Nähte halten die Lagen zusammen: Was hindurchgezogen wird, bleibt zwischen ihnen und rutscht weder zur Kante hinauf noch ins Futter hinunter.
