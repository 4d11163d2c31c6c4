# Sätze von kit/sewing/operations/facing_edges.py.

finish_facing-overcast = { ACC($edge) } { $finish }.
finish_facing-guide = { DAT($edge, with: "an") } im Abstand von { $turn } zur Schnittkante eine Hilfsnaht steppen. Rundungen bis an die Naht einschneiden.
finish_facing-fold = Die Kante an der Hilfsnaht einschlagen und bügeln.
finish_facing-sew = Die Bruchkante knappkantig steppen, nur durch den Einschlag.
finish_facing-why = Die freie Kante eines Belegs liegt innen flach und wird nur gegen das Ausfransen gesichert: ein Umschlag würde sich außen abzeichnen.
finish_facing-why_turned = Eine eingeschlagene Kante ist bei dünnem Stoff sauber; die Hilfsnaht gibt die Faltlinie vor und hindert die Rundung am Ausdehnen.
