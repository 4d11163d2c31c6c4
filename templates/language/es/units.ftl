# Cómo se escriben los números con sus unidades. El signo decimal lo pone la propia lengua.

unit-mm = { $amount } mm
unit-cm = { $amount } cm
unit-m = { $amount } m
unit-in = { $amount } pulg.
unit-yd = { $amount } yd
unit-percent = { $amount } %
