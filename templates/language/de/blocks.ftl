# Titel der Teile der Grundschnitte.

block-front_bodice = Oberteil vorn
block-back_bodice = Oberteil hinten
block-front_skirt = Rock vorn
block-back_skirt = Rock hinten
block-front_trouser_leg = Vorderhose
block-back_trouser_leg = Hinterhose
block-sleeve = Ärmel

# Was von einem abgenommenen Schnitt zu wissen ist.
block_note-traced =
    { $size ->
        [none] { $title } ist von einem Kleidungsstück abgenommen und passt nur der Person, der dieses passt; mit anderen Körpermaßen ändert sich der Schnitt nicht.
       *[other] { $title } ist von einem Kleidungsstück abgenommen und passt nur für Größe { $size }; mit anderen Körpermaßen ändert sich der Schnitt nicht.
    }
