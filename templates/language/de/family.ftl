# Zwei Ausgaben, Größen oder Einstellungen einer Lektion nebeneinander, und was eine Ausgabe geändert hat.

family-title = { $title }: { $before } neben { $after }
family-errata = { $title }: Änderungen in Ausgabe { $after }
family-errata_lead = Für alle, die Ausgabe { $before } haben: Das ist alles, was anders ist. Im eigenen Heft von Hand ändern oder das neue drucken.
family-nothing = Es gibt keinen Unterschied, den man bemerken könnte.
family-edition = Ausgabe { $edition }
family-edition_dated = Ausgabe { $edition } ({ $date })
family-as_it_stands = wie eingestellt
family-with = mit { $values }
family-as_cut = wie zuerst zugeschnitten
family-corrected = wie korrigiert
family-first = das erste
family-second = das zweite
family-measures = Maße
family-pieces = Schnittteile
family-drafting = Schnittkonstruktion
family-sewing = Nähen
family-notions = Kurzwaren
family-measure = Maß
family-difference = Unterschied
family-of_edge = { $name }, Länge auf der Nahtlinie
family-of_allowance = { $name }, Nahtzugabe
family-of_extra = { $name }, Anprobezugabe
family-of_notch = { $name }, Passzeichen: ab Anfang der Kante
family-of_strip_length = { $name }, Zuschnittlänge
family-of_strip_width = { $name }, Zuschnittbreite
family-of_cut = { $name }, Anzahl im Zuschnitt
family-of_cloth = { $cloth }, { $width } breit, zu kaufen
family-step_new = Neu: { $title }
family-step_gone = Entfällt: { $title }
family-was = Bisher:
family-now = Jetzt:
family-picture = { $piece }: { $before } gestrichelt, { $after } durchgezogen
family-picture_alt = { $piece }, { $before } gestrichelt und { $after } darüber; was abweicht, ist kräftig gezeichnet. { $words }
family-no_such_place = kein Teil von beiden hat eine Stelle „{ $place }“.
family-edition_missing = es gibt keine Datei „{ $file }“.
family-edition_missing_do = Die Datei pattern.json eines früheren Laufs von lessonkit build, ihren Ordner, den einer Veröffentlichung oder ein Notebook nennen.
family-edition_size = in der Veröffentlichung „{ $file }“ gibt es keine Größe { $size }.
family-edition_size_do = Es gibt { $sizes }.
family-edition_closed = „{ $file }“ kann nicht gelesen werden ({ $reason }).
family-edition_closed_do = Die Datei und ihre Zugriffsrechte prüfen.
family-edition_damaged = „{ $file }“ ist beschädigt: Die Datei enthält keinen ganzen Schnitt.
family-edition_damaged_do = Eine Kopie dieser Ausgabe nehmen oder sie aus dem damaligen Notebook neu erzeugen.
family-edition_large = „{ $file }“ ist größer, als ein Schnitt sein kann.
family-edition_large_do = Die Datei pattern.json eines früheren Laufs von lessonkit build nennen.
family-edition_other = „{ $file }“ ist kein Schnitt dieses Kits.
family-edition_other_do = Die Datei pattern.json eines früheren Laufs von lessonkit build, ihren Ordner, den einer Veröffentlichung oder ein Notebook nennen.
family-edition_version = „{ $file }“ ist ein Schnitt der Version { $version }, die dieses Kit nicht kennt.
family-edition_version_do = Das Kit verwenden, mit dem er erzeugt wurde, oder ein neueres.
family-one_edition = eine Ausgabe allein lässt sich nicht vergleichen.
family-one_edition_do = Danach ein Notebook oder eine andere Ausgabe nennen.
family-one_notebook = es ist nicht gesagt, womit das Notebook verglichen wird.
family-one_notebook_do = Eines angeben: --sizes W3,W4, --values sleeve_length=45cm, --preset "Langer Ärmel" oder --as-cut, oder ein zweites Notebook oder eine Ausgabe nennen.
family-two_sizes = { $count ->
    [one] eine Größe ist angegeben.
   *[other] { $count } Größen sind angegeben.
}
family-two_sizes_do = Zwei Größen der Lektion angeben: --sizes W3,W4.
family-two_given = zwei sind angegeben, und eines davon soll mit sich selbst verglichen werden.
family-two_given_do = --sizes und --as-cut weglassen, oder den zweiten Namen.
family-one_size = die Lektion verwendet kein Körpermaß, also hat sie nur eine Größe.
family-one_size_do = Stattdessen zwei Werte vergleichen: --values length=40cm.
family-no_lesson = es gibt keine Lektion zum Vergleichen.
family-no_lesson_do = Eine Lektion angeben: compare(lesson, sizes=("W3", "W5")).
family-no_other = es ist nicht gesagt, womit die Lektion verglichen wird.
family-no_other_do = compare(lesson, sizes=("W3", "W5")) oder compare(lesson, seam=1 * cm) schreiben, oder eine andere Lektion oder den Ordner eines früheren Laufs nennen.
family-of_dart = { $name }, Breite am offenen Ende
family-of_piece = { $piece }: { $name }
family-grade = { $title }: Gradierung
family-grade_unit = { $unit ->
    [inch] Werte in Zoll, darunter jeweils der Sprung von der Größe davor
   *[cm] Werte in cm, darunter jeweils der Sprung von der Größe davor
}
family-grade_breaks = Ab hier sind andere Sprünge gewollt: { $sizes }.
family-grade_same = In jeder Größe gleich
family-grade_even = Jeder Sprung passt zu seinen Nachbarn.
family-grade_follows = Ungleichmäßig, weil es die Körpermaße selbst sind
family-grade_jump = { $name }: von { $before } auf { $size } springt es um { $step }, daneben um { $usual }.
family-grade_turn = { $name }: von { $before } auf { $size } geht es in die andere Richtung, { $step }, daneben um { $usual }.
family-grade_scales = { $name }: in { $before } und { $size } nicht gleich ({ $step }). Soll es gleich sein, herausnehmen, was es der Größe folgen lässt.
family-grade_missing = { $name }: von { $before } und { $size } hat es nur eine.
family-grade_because = Ebenso das Körpermaß: { $name }.
family-no_grade_do = Eine Gradierung braucht zwei Größen oder mehr; die Maßtabelle der Lektion prüfen.
family-not_drafted = { $size } fehlt, weil sich die Größe nicht konstruieren lässt: { $why }
family-grade_off =
    { $way ->
        [above] { $name }: { $size } ist um { $by } größer, als { $before } und { $after } erwarten lassen.
       *[below] { $name }: { $size } ist um { $by } kleiner, als { $before } und { $after } erwarten lassen.
    }
family-two_editions = zwei Ausgaben sind, wie sie erzeugt wurden; Größe und Werte lassen sich nicht angeben.
family-two_editions_do = --size, --values und --preset weglassen, oder das Notebook nennen.
family-other_language = Die beiden sind in verschiedenen Sprachen verfasst; die Texte ihrer Schritte werden nicht verglichen.
