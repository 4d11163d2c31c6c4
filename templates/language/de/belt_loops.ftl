# Sätze von kit/sewing/operations/belt_loops.py.

belt_loop-turn = Jedes Ende ({ $strip }) { $ends } einschlagen; fertig ist das Stück { $length } lang.
belt_loop-place = Außen am Kleidungsstück quer über die Naht legen ({ $seam }), das obere Ende { $at }.
belt_loop-sew = Beide Enden quer feststeppen, hin und zurück.
