# Sätze von kit/sewing/operations/facings.py.

fuse-lay = Die Einlage mit der Klebeseite nach unten auf die linke Stoffseite { GEN($pieces) } legen.
fuse-press = Mit einem Bügeltuch bedecken und aufbügeln, das Eisen dabei von Stelle zu Stelle heben, nicht schieben. Flach auskühlen lassen.
fuse-why = Einlage verhindert, dass sich eine Kante dehnt, und gibt Knöpfen, Bund und Kragen festen Halt. Sie wird zuerst aufgebügelt, denn auf dem flachen Teil geht das ohne Knitter.

face_with_interfacing-lay = Die Einlage mit der Klebeseite nach oben auf die rechte Stoffseite { GEN($pieces) } legen und { DAT($edge, with: "an") } stecken.
face_with_interfacing-sew = { DAT($edge, with: "an") } im Abstand von { $allowance } zur Kante steppen.
face_with_interfacing-clip = Wo die Kante rund ist, die Nahtzugaben bis fast an die Stiche einschneiden.
face_with_interfacing-turn = Die Einlage auf die linke Stoffseite wenden, sodass der Klebstoff auf dem Stoff liegt, und die Kante mit den Fingern ausstreichen. Noch nicht bügeln.
face_with_interfacing-fuse = Beide Lagen glatt streichen, mit einem Bügeltuch bedecken und aufbügeln. Damit ist { NOM($edge) } sauber verarbeitet.
face_with_interfacing-why = Die Naht schließt beide offenen Kanten ein. Aufgebügelt wird zuletzt, denn vor dem Wenden würde das Eisen die falschen Seiten verkleben.

attach_facing-pin = { ACC($facing) } rechts auf rechts auf { ACC($edge) } stecken.
attach_facing-sew = Im Abstand von { $allowance } die ganze Kante entlang steppen.
attach_facing-grade = Nahtzugaben abstufen: die des Belegs schmaler zurückschneiden als die des Kleidungsstücks.
attach_facing-clip = Rundungen bis fast an die Stiche einschneiden, Ecken abschrägen.
attach_facing-turn = Den Beleg nach innen wenden und bügeln, die Naht genau an der Kante.
attach_facing-turn_only = Den Beleg nach innen wenden.
attach_facing-why = Verschieden breit zurückgeschnittene Lagen bilden keinen Wulst; durch die Einschnitte liegt eine runde Zugabe nach dem Wenden flach.

understitch-press = { ACC($facing) } aufklappen und die Nahtzugaben dorthin bügeln.
understitch-sew = Untersteppen: { $distance } neben der Naht auf { ACC($facing) } steppen, nur durch diese Lage und die Nahtzugaben.
understitch-roll = { ACC($facing) } wieder nach innen legen und bügeln: die Naht rollt von selbst außer Sicht.
understitch-why = Die Stepplinie zieht die Kante ein wenig nach innen, sodass der Beleg nicht hervorrollt.
