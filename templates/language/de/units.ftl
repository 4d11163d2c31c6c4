# Wie Zahlen mit ihren Einheiten geschrieben werden.

unit-mm = { $amount } mm
unit-cm = { $amount } cm
unit-m = { $amount } m
unit-in = { $amount } Zoll
unit-yd = { $amount } yd
unit-percent = { $amount } %
