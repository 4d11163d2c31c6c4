# Sätze von kit/sewing/operations/buttons.py.

buttonholes-try = Zuerst ein Knopfloch auf einem Rest mit denselben Lagen nähen und den Knopf darin probieren.
buttonholes-work = { ACC($places) } anzeichnen und durch alle Lagen nähen, { $length } lang.
buttonholes-cut = Quer vor jedes Ende eine Nadel stecken und den Schlitz mit dem Nahttrenner von der Mitte nach außen aufschneiden.
buttonholes-why = Ein Knopfloch ist so lang, wie der Knopf breit und dick zusammen ist: bei einem flachen etwa { $thick } länger als sein Durchmesser. Ohne Einlage dehnt es sich.

buttons-find = Das Kleidungsstück schließen, durch jedes Knopfloch nahe am Ende eine Nadel stecken und anzeichnen, wo sie herauskommt.
buttons-sew = { $count } Knöpfe mit { $size } Durchmesser mit doppeltem Faden an den Markierungen für { ACC($places) } annähen.
buttons-one = Einen Knopf mit { $size } Durchmesser mit doppeltem Faden an der Markierung für { ACC($places) } annähen.
buttons-shank = Beim Annähen eine Stecknadel unter den Faden legen, sie herausziehen und den Faden unter dem Knopf umwickeln: ein Fadenstiel.
buttons-why = Der Stiel lässt Platz für die Lage, die darübergeknöpft wird.
