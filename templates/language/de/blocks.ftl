# Titel der Teile der Grundschnitte.

block-front_bodice = Oberteil vorn
block-back_bodice = Oberteil hinten
block-front_skirt = Rock vorn
block-back_skirt = Rock hinten
block-front_trouser_leg = Vorderhose
block-back_trouser_leg = Hinterhose
block-sleeve = Ärmel
