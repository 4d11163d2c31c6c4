# Werte neben dem Notebook, wenn sie nicht verwendet werden.
saved-broken = { $file }: Die gespeicherten Werte lassen sich nicht lesen; es gelten die der Lektion. Die Datei bleibt beim nächsten Speichern erhalten.
saved-broken_line = { $file }: Die gespeicherten Werte lassen sich in Zeile { $line } nicht lesen; es gelten die der Lektion. Die Datei bleibt beim nächsten Speichern erhalten.
saved-another = { $file } enthält Werte einer anderen Lektion, „{ $other }“; sie werden nicht verwendet. Wenn sie für diese bestimmt sind, darin "lesson": "{ $slug }" schreiben.
saved-no_size = { $file } nennt die Größe „{ $size }“, die es in dieser Lektion nicht gibt; es wird eine andere gezeichnet. Eine Größe wählen und speichern.
saved-no_units = { $file } nennt die Einheit „{ $units }“; bekannt sind nur cm und inch. Es gilt die der Lektion. Eine Einheit wählen und speichern.
saved-out_of_range = { $file }: { $trouble } Es gilt der Wert der Lektion: { $value }.
saved-apart = { $other } in diesem Ordner hat denselben Titel. Die Werte dieses Notebooks stehen getrennt davon in { $file }.
