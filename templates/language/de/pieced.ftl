# Sätze von kit/sewing/pieced.py: die Stücke zusammensetzen, aus denen ein Streifen besteht.

pieced-bias_lay = Zwei Stücke { GEN($strip) } rechts auf rechts im rechten Winkel aufeinanderlegen, schräges Ende auf schräges Ende, so dass sich die Längskanten { $allowance } von den schrägen Enden kreuzen: Auf beiden Seiten steht eine kleine Spitze über.
pieced-bias_sew = { $allowance } neben den schrägen Enden steppen, von einer Kreuzung zur anderen.
pieced-bias_open = Die Zugaben auseinanderbügeln und die Spitzen abschneiden.
pieced-corner_lay = Die Enden zweier Stücke { GEN($strip) } rechts auf rechts im rechten Winkel aufeinanderlegen, Ecke auf Ecke.
pieced-corner_sew = Diagonal über das gemeinsame Quadrat steppen, so dass die Ecke, an der die beiden Enden zusammentreffen, außerhalb der Naht liegt.
pieced-corner_open = Die Ecke { $allowance } neben der Naht abschneiden und die Zugaben auseinanderbügeln.
pieced-straight_lay = Die Enden zweier Stücke { GEN($strip) } rechts auf rechts legen.
pieced-straight_sew = { $allowance } neben den Enden quer steppen.
pieced-straight_open = Die Zugaben auseinanderbügeln.
pieced-square_halve = Das Quadrat { GEN($strip) } von Ecke zu Ecke in zwei Hälften schneiden.
pieced-square_seam = Die Hälften an zwei Kanten, die im Fadenlauf liegen, rechts auf rechts legen, so dass ein schräges Stück mit zwei Schrägkanten entsteht, und { $allowance } neben der Kante steppen. Die Naht auseinanderbügeln.
pieced-square_rule = Auf der linken Seite Linien im Abstand von { $width } ziehen, von einer Schrägkante aus und parallel zu ihr. Den Rest an der anderen abschneiden.
pieced-square_tube = Die beiden Kanten im Fadenlauf rechts auf rechts zum Schlauch legen, um eine Linie versetzt, so dass { $allowance } neben der Kante Linie auf Linie trifft und an jedem Ende ein Streifen übersteht. { $allowance } neben der Kante steppen und die Naht auseinanderbügeln.
pieced-square_cut = Beginnen, wo der Streifen übersteht, und an der Linie entlang rundherum bis zum anderen Ende schneiden.
pieced-again = Die übrigen Stücke ebenso zusammensetzen, { $joins } Nähte in jedem Streifen.
