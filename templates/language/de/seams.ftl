# Sätze von kit/sewing/operations/seams.py.

plain_seam-sew = Im Abstand von { $allowance } zur Kante steppen.
plain_seam-sew_with_opening = Im Abstand von { $allowance } zur Kante steppen, dabei { $size } { GEN($edge) } offen lassen, { $stretch }. An beiden Enden der Öffnung verriegeln.
plain_seam-sew_to_marks = Im Abstand von { $allowance } zur Kante steppen, dabei { ACC($mark) } zwischen den Markierungen offen lassen: { $size }, { $stretch }. An beiden Enden der Öffnung verriegeln.
plain_seam-sew_open_start = Im Abstand von { $allowance } zur Kante steppen, dabei die ersten { $size } { GEN($edge) } offen lassen. Verriegeln, wo die Öffnung endet.
plain_seam-sew_open_end = Im Abstand von { $allowance } zur Kante steppen, dabei die letzten { $size } { GEN($edge) } offen lassen. Verriegeln, wo die Öffnung beginnt.
plain_seam-sew_line_to_line = Im Abstand von { $allowance } zur Kante steppen, aber nicht an der offenen Kante beginnen und enden, sondern wo sich die Nahtlinien der Nachbarkanten kreuzen. Dort verriegeln.
plain_seam-finish = Die offenen Kanten der Nahtzugaben { $finish }.
plain_seam-finish_together = Beide Nahtzugaben zusammen { $finish }.
plain_seam-bound = { ACC($strip) } um die offene Kante jeder Nahtzugabe legen und knappkantig durch alle Lagen feststeppen.
plain_seam-bound_bought = Schrägband um die offene Kante jeder Nahtzugabe legen und knappkantig durch alle Lagen feststeppen.
plain_seam-bound_together = Die beiden Nahtzugaben zusammenlegen, { ACC($strip) } um beide offenen Kanten legen und knappkantig durch alle Lagen feststeppen.
plain_seam-bound_together_bought = Die beiden Nahtzugaben zusammenlegen, Schrägband um beide offenen Kanten legen und knappkantig durch alle Lagen feststeppen.
plain_seam-why_open = Auseinandergebügelt liegt eine Naht am flachsten: nirgends liegen mehr als zwei Lagen aufeinander.
plain_seam-why_one_side = Zu einer Seite gebügelt ist eine Naht haltbarer, und beide Zugaben lassen sich wie eine versäubern oder feststeppen.
plain_seam-why_later = Gebügelt wird später, denn die nächste Naht ist leichter zu erreichen, solange die Zugaben noch hochstehen.
plain_seam-why_line_to_line = Bleiben die Enden der Zugaben frei, lassen sie sich in beide Richtungen legen, wenn die nächste Naht an einer Ecke auf diese trifft.
plain_seam-opening_edges = Auch entlang der Öffnung die Zugaben zurückbügeln, ihre offenen Kanten einschlagen und feststeppen.
plain_seam-gap_edges = Auch entlang der Wendeöffnung die Zugaben zurückbügeln; sie bleiben offen, bis die Wendeöffnung von Hand geschlossen wird.

french_seam-first = Im Abstand von { $first } zur offenen Kante steppen.
french_seam-trim = Ausgefranste Fäden abschneiden.
french_seam-trim_narrow = Beide Nahtzugaben auf etwas weniger als { $second } zurückschneiden, damit später keine offene Kante hervorschaut.
french_seam-trim_sliver = Von beiden Nahtzugaben einen schmalen Streifen abschneiden, sodass sie schmaler sind als die zweite Naht und später keine offene Kante hervorschaut.
french_seam-trim_to = Beide Nahtzugaben auf { $trim } zurückschneiden.
french_seam-turn = Die Teile so wenden, dass sie rechts auf rechts liegen, und die Naht genau in den Bruch bügeln.
french_seam-second = Im Abstand von { $second } zum Falz steppen: die offenen Kanten sind eingeschlossen.
french_seam-takes = Beide Nähte zusammen brauchen die Nahtzugabe von { $total }.
french_seam-why = Eine französische Naht schließt ihre offenen Kanten ein und eignet sich für feine Stoffe, die fransen oder durchscheinen. Bei dickem Stoff trägt sie zu sehr auf.
french_seam-why_wrong_sides = Links auf links sieht die erste Naht verkehrt aus: durch das Wenden kommt sie in Ordnung, und die Kanten verschwinden innen.

press-open = Die Nahtzugaben { GEN($edge) } auseinanderbügeln, zuerst von der linken Stoffseite, dann leicht von der rechten unter einem Bügeltuch.
press-one_side = Die Nahtzugaben { GEN($edge) } zusammen zu einer Seite bügeln.
press-towards = Die Nahtzugaben { GEN($edge) } zusammen in Richtung { GEN($piece) } bügeln.
press-edge = { ACC($edge) } genau an die Kante rollen und bügeln.
press-why = Jede Naht bügeln, bevor eine andere sie kreuzt: danach kommt das Eisen nicht mehr hinein.
