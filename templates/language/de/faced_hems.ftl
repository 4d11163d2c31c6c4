# Sätze von kit/sewing/operations/faced_hems.py.

faced_hem-pin = { ACC($facing) } rechts auf rechts auf { ACC($edge) } stecken.
faced_hem-sew = Im Abstand von { $allowance } zur Kante in einem Zug steppen.
faced_hem-grade = Die Nahtzugabe des Belegs schmaler zurückschneiden als die des Kleidungsstücks.
faced_hem-press = Die Zugaben zum Beleg hin bügeln, dann den Beleg nach innen wenden und bügeln, die Naht knapp innerhalb des Bruchs.
faced_hem-turn_free = Die freie Kante des Belegs { $turn } einschlagen und bügeln.
faced_hem-finish_free = Die freie Kante des Belegs { $finish }.
faced_hem-free_done = Die freie Kante des Belegs ist schon versäubert.
faced_hem-hand = Von Hand mit lockeren Blindstichen annähen.
faced_hem-machine = Knapp neben der freien Kante feststeppen.
faced_hem-why = Wo eine Kante zu rund oder der Stoff für einen umgeschlagenen Saum zu kurz oder zu dick ist, liegt ein Formbeleg flach.
