# Sätze der Nähschritte, Bildbeschreibungen und die kleinen Wörter, aus denen sie gebildet werden.
# Namen stehen ohne Artikel: „Saum (Vorderteil)“.

language-name = Deutsch

phrase-minutes = etwa { $count } Minuten

phrase-edge_on_side = { $edge } { $side }
phrase-piece = { $piece }
phrase-piece_on_side = { $piece } { $side }
phrase-place = { $edge } ({ $piece })
phrase-place_on_side = { $edge } ({ $piece } { $side })
phrase-run = { $edge } ({ $piece })
phrase-run_on_side = { $edge } ({ $piece } { $side })
phrase-row = { $first } mit { $last }
# Das Deutsche behält die Großschreibung: { $small } wird nicht gebraucht.
phrase-title = { $given }
phrase-two = { $first } und { $last }
phrase-more = { $first }, { $last }
phrase-two_places = { $first } sowie { $last }
phrase-more_places = { $first }, { $last }

word-left = links
word-right = rechts
word-face-right = rechte Stoffseite oben
word-face-wrong = linke Stoffseite oben
word-interfacing-right = Klebeseite unten
word-interfacing-wrong = Klebeseite oben
word-finish-zigzag = Zickzackstich
word-finish-overlock = Overlockstich
word-finish-pinked = Zackenschere
word-stuff-interfacing = Einlage
word-thing-zip = Reißverschluss
word-thing-button = Knopf
word-thing-buttonhole = Knopfloch
word-thing-elastic = Gummiband
word-thing-cord = Kordel
word-thing-binding = Einfassstreifen

edge-outer = Außenkante
edge-inner = Innenkante
edge-wrist = Handgelenkkante
edge-side = Seitennaht
edge-neck = Halsausschnitt
edge-shoulder = Schulternaht
edge-opening = Ärmelöffnung
edge-centre = Mittellinie

common-both_sides = Die linke und die rechte Hälfte gleich arbeiten.
common-pin_right = { $a } rechts auf rechts auf { $b } legen und stecken: { $edge }.
common-pin_wrong = { $a } links auf links auf { $b } legen und stecken: { $edge }.
common-pin_right_same_piece = Linke und rechte Hälfte rechts auf rechts legen und stecken: { $edge }.
common-pin_wrong_same_piece = Linke und rechte Hälfte links auf links legen und stecken: { $edge }.
common-pin_right_run_on_run = { $a } rechts auf rechts auf { $b } stecken.
common-pin_wrong_run_on_run = { $a } links auf links auf { $b } stecken.
common-match_notches = Passzeichen aufeinandertreffen lassen.
common-match_seams = Nähte aufeinandertreffen lassen.
common-match_seams_and_notches = Nähte und Passzeichen aufeinandertreffen lassen.
common-ease = Eine Kante ist mit Absicht um { $ease } länger: die Mehrweite gleichmäßig verteilen und stecken.
common-press_open = Nahtzugaben auseinanderbügeln.
common-press_one_side = Nahtzugaben zusammen zu einer Seite bügeln.
common-press_later = Noch nicht bügeln.
common-press_towards = Nahtzugaben zusammen in Richtung { $piece } bügeln.

alt-bottom = { $piece } liegt ausgebreitet, { $face }.
alt-together = { $piece } liegt darauf, { $face }, Kante auf Kante: { $edge }.
alt-open = { $piece } liegt aufgeklappt daneben, { $face }; verbunden an: { $edge }.
alt-flat = { $piece } liegt darauf, { $face }.
alt-turned = { $edge }: { $depth } umgeschlagen.
alt-row = Neue Naht: { $edge }.
alt-row_inside = Neue Naht { $inset } innerhalb der Kante: { $edge }.
alt-row_outside = Neue Naht in der Nahtzugabe, { $inset } außerhalb der Nahtlinie: { $edge }.
alt-old_row = Zu sehen ist die frühere Naht: { $edge }.
alt-gap = Sie lässt { $gap } offen.
alt-strip = Zu sehen: { $strip }.
alt-pinned = Mit Nadeln gesteckt: { $edge }.
alt-folded = { $piece } ist entlang einer Linie umgeschlagen.
alt-thing = An seinem Platz zu sehen: { $thing }.
alt-things = An ihrem Platz zu sehen, { $count }-mal: { $thing }.
alt-row_line = Eine neue Naht folgt der markierten Linie.
alt-row_baste = Neue Heftnaht mit langen Stichen: { $edge }.
alt-row_gather = Reihen langer Stiche zum Kräuseln: { $edge }.
alt-row_hand = Handstiche: { $edge }.
alt-section = Ein Querschnitt zeigt, wie die Lagen liegen.
alt-draft = Schnittzeichnung: { $pieces }.
alt-draft_strips = Zuzuschneidende Streifen: { $strips }.
alt-draft_new = Neue Linien: { $lines }.
alt-draft_removed = Entfernt oder neu gezeichnet: { $lines }.
alt-draft_points = Neue Punkte: { $points }.
alt-draft_measures = Maße: { $measures }.
alt-draft_measure = { $name } { $value }
