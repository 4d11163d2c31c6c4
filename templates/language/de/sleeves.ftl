# Sätze von kit/sewing/operations/sleeves.py.

set_in_sleeve-place = Das Kleidungsstück auf links drehen, { ACC($sleeve) } auf rechts, und rechts auf rechts in das Armloch stecken. Darauf achten, dass links und rechts nicht verwechselt werden.
set_in_sleeve-pin = Die Armkugel von der Ärmelseite her auf { ACC($edge) } stecken: Ärmelnaht auf Seitennaht, der höchste Punkt der Kugel an der Schulternaht.
set_in_sleeve-pin_notched = Die Armkugel von der Ärmelseite her auf { ACC($edge) } stecken: Ärmelnaht auf Seitennaht, der höchste Punkt der Kugel an der Schulternaht und Passzeichen auf Passzeichen.
set_in_sleeve-ease = Den Einhaltefaden anziehen, bis die Armkugel passt: { $ease } Mehrweite liegen im oberen Teil, keine unter dem Arm. Auf der Nahtlinie darf sich nichts kräuseln.
set_in_sleeve-sew = Im Abstand von { $allowance } zur Kante steppen, der Ärmel liegt oben, Anfang unter dem Arm; die Strecke unter dem Arm zweimal steppen.
set_in_sleeve-trim = Beide Zugaben der Strecke unter dem Arm auf die Hälfte zurückschneiden.
set_in_sleeve-finish = Die offenen Kanten zusammen { $finish }.
set_in_sleeve-press = Die Zugaben über der Armkugel zum Ärmel hin bügeln; die Naht nicht von der rechten Stoffseite flach bügeln.
set_in_sleeve-press_open = Die Naht über der Armkugel auf einem Bügelei auseinanderbügeln; wo das endet, beide Zugaben einschneiden, damit sie unter dem Arm zusammen stehen bleiben.
set_in_sleeve-press_garment = Die Zugaben über der Armkugel zum Kleidungsstück hin bügeln; die Naht nicht von der rechten Stoffseite flach bügeln.
set_in_sleeve-finish_apart = Die offenen Kanten einzeln { $finish }.
set_in_sleeve-why = Die Armkugel ist länger als das Armloch, weil sie sich über die Schulter wölben muss. Vorher mit langen Stichen eingehalten, kann die Mehrweite nicht zur Seite rutschen.
