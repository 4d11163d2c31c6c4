# Sätze von kit/sewing/operations/interfacing.py.

baste_interfacing-lay = Die Einlage auf die linke Stoffseite { GEN($pieces) } legen, beide Lagen flach, und stecken.
baste_interfacing-sew = Rundherum in der Nahtzugabe heften, { $distance } außerhalb der Nahtlinie.
baste_interfacing-trim = Wenn die Nähte genäht sind, die Einlage bis dicht an die Stiche zurückschneiden und sichtbare Heftfäden herausziehen.
baste_interfacing-why = Einnähbare Einlage bleibt weich und braucht keine Hitze; in der Nahtzugabe geheftet, wird sie von den Nähten gehalten, und ihre eigene Kante bildet keinen Wulst.
