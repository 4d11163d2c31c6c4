# Sätze von kit/sewing/operations/belt_loops.py.

belt_loop-turn = Die Enden { GEN($strip) } je { $ends } einschlagen; fertig ist das Stück { $length } lang.
belt_loop-place = Die Schlaufe von außen quer auf { ACC($seam) } legen, das obere Ende { $at }.
belt_loop-sew = Beide Enden quer feststeppen, hin und zurück.
