# What mends a draft that is refused or fails its proof (kit/proof/remedy): values to set, found by trying.
# $name is the name of a parameter, such as hem drop; $value the value that mends and $was the one that stands, with units.

remedy-least = { $name }: at least { $value }, now { $was }.
remedy-most = { $name }: at most { $value }, now { $was }.
remedy-to = { $name }: { $value }, now { $was }.
# One of several values that are changed at once.
remedy-each = { $name }: { $value }
# $changes is a list of values, each as in remedy-each.
remedy-together = Together: { $changes }.
remedy-back = Back to values known to be good: { $changes }.
# $count is how many values go back, too many to name each.
remedy-back_many = { $count ->
    [one] Back to a value known to be good.
   *[other] Back to { $count } values known to be good.
}
# Over a list of values; $count is how many there are.
remedy-one_of = { $count ->
    [one] This mends it, all other values as they are:
   *[other] Each of these mends it, all other values as they are:
}
remedy-no_single = { $count ->
    [one] No single value mends it inside its range. This does:
   *[other] No single value mends it inside its range. Each of these does:
}
remedy-none = No value was found, inside its range, that mends it.
# Before what stands over a list, on the panel, where the draft itself is not refused.
remedy-for_proof = To put right what the proof found:
remedy-looking = Looking for values that mend it …
# Buttons.
remedy-take = Set it
remedy-take_back = Go back
# What a button does when it is pointed at. $remedy is one of the sentences above.
remedy-take_tip = Set it: { $remedy }
# On the command line. $remedy is one of the sentences above.
remedy-line = remedy: { $remedy }
# Before a finding and its remedies, where the values looked at are not those that stand.
remedy-own_values = With the lesson’s own values:
