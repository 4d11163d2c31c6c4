# Ablehnungen: was an einem Wert, einem Maß, einer Datei oder einer Zeichnung nicht geht und was zu tun ist (Schlüssel auf
# _do). Der Ort steht davor. Was im Notebook steht, bleibt, wie es ist.

refusal-near = Gemeint ist vielleicht „{ $name }“.
refusal-known = Hier gibt es: { $names }.
refusal-none = Hier gibt es noch keine.
