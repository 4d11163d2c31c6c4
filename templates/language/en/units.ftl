# How numbers and their units are written. The decimal mark comes from the language's own rules.

unit-mm = { $amount } mm
unit-cm = { $amount } cm
unit-m = { $amount } m
unit-in = { $amount } in
unit-yd = { $amount } yd
unit-percent = { $amount }%
