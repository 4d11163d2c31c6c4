# Eine Lektion, groß gezeigt (kit/live/large.py): vor der Klasse oder der Kamera. Aus der Ferne zu lesen, also kurz.
large-open = Groß zeigen
large-leave = Verlassen
large-back = Zurück
large-next = Weiter
large-look = Grund
large-sliders = Regler
large-help = Bild auf und Bild ab gehen durch die Schritte, B wechselt den Grund, H verbirgt die Regler, Esc verlässt.
large-look_light = Hell
large-look_dark = Dunkel
large-look_green = Grün
large-look_blue = Blau
