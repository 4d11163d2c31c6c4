# Comment s’écrivent les nombres et leurs unités.

unit-mm = { $amount } mm
unit-cm = { $amount } cm
unit-m = { $amount } m
unit-in = { $amount } po
unit-yd = { $amount } vg
unit-percent = { $amount } %
