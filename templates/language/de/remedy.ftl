# Was einen Entwurf in Ordnung bringt, der abgelehnt wird oder die Prüfung nicht besteht: Werte, durch Probieren gefunden.
# { $name } ist der Name eines Werts; { $value } bringt es in Ordnung, { $was } steht jetzt da, beide mit Einheit.

remedy-least = { $name }: mindestens { $value }, jetzt { $was }.
remedy-most = { $name }: höchstens { $value }, jetzt { $was }.
remedy-to = { $name }: auf { $value }, jetzt { $was }.
remedy-each = { $name }: { $value }
remedy-together = Zusammen: { $changes }.
remedy-back = Zurück zu Werten, die sich bewährt haben: { $changes }.
remedy-back_many = { $count ->
    [one] Zurück zu einem Wert, der sich bewährt hat.
   *[other] Zurück zu { $count } Werten, die sich bewährt haben.
}
remedy-one_of = { $count ->
    [one] Das hilft, wenn alle anderen Werte bleiben:
   *[other] Jedes davon hilft, wenn alle anderen Werte bleiben:
}
remedy-no_single = { $count ->
    [one] Kein einzelner Wert hilft innerhalb seines Bereichs. Das hilft:
   *[other] Kein einzelner Wert hilft innerhalb seines Bereichs. Jedes davon hilft:
}
remedy-none = Innerhalb der Bereiche wurde kein Wert gefunden, der hilft.
remedy-for_proof = Gegen das, was die Prüfung gefunden hat:
remedy-looking = Werte, die helfen, werden gesucht …
remedy-take = Einstellen
remedy-take_back = Zurückgehen
remedy-take_tip = Einstellen: { $remedy }
remedy-line = Abhilfe: { $remedy }
remedy-own_values = Mit den Werten der Lektion selbst:
