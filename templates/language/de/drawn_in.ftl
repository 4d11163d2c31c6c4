# Sätze von kit/sewing/operations/drawn_in.py.

thread_elastic-draw = { $length } Gummiband, { $width } breit, abschneiden, eine Durchziehnadel an einem Ende befestigen und es { DAT($edge, with: "an") } durch den Tunnel ziehen. Das andere Ende festhalten.
thread_elastic-join = Die Enden unverdreht { $join } übereinanderlegen und in einem Kästchen zusammensteppen.
thread_elastic-fasten = Beide Enden quer über die Tunnelenden feststeppen.
thread_elastic-close = Den Ring hineinschlüpfen lassen und die Öffnung { DAT($gap, with: "an") } in einer Linie mit der Naht zusteppen.
thread_elastic-spread = Die Kante einige Male dehnen, damit sich die Mehrweite gleichmäßig verteilt.
thread_elastic-why = Gummiband wird kürzer geschnitten als die Kante, die es zusammenzieht; vor dem Zusammennähen die Länge am Körper probieren.

thread_cord-draw = Eine Durchziehnadel an einem Ende einer { $length } langen Kordel befestigen und sie { DAT($edge, with: "an") } durch den Tunnel ziehen.
thread_cord-draw_strip = Eine Durchziehnadel an einem Ende { GEN($strip) } befestigen und { DAT($edge, with: "an") } durch den Tunnel ziehen.
thread_cord-ends = Die Enden { DAT($places, with: "an") } herausführen.
thread_cord-close = Die Öffnung { DAT($gap, with: "an") } in einer Linie mit der Naht zusteppen.
thread_cord-tack = Auf halber Strecke einmal quer über Tunnel und Kordel steppen, damit sie sich nicht herausziehen lässt. Die Enden verknoten.
thread_cord-knot = Die beiden Enden miteinander verknoten, damit sie nicht zurückrutschen.
thread_cord-why = Keine Zugbänder an Kapuze oder Hals von Kleidung für kleine Kinder; sonst die Enden kurz halten und EN 14682, ASTM F1816 und die örtlich geltenden Vorschriften beachten.

drawn_in-beside_elastic = Dabei neben dem Gummiband bleiben, auf der Seite der Ösen, und es mit der Durchziehnadel nicht kreuzen.
drawn_in-beside_cord = Dabei neben der Kordel bleiben, die auf der Seite der Ösen liegt, und sie mit der Durchziehnadel nicht kreuzen.
