# Refusals: what is wrong with a value, a measurement, a file or a draft, and what to do (keys that end in _do).
# The place stands before it. What is written in a notebook stays as it is.

refusal-near = Did you mean “{ $name }”?
refusal-known = Known here: { $names }.
refusal-none = There are none here yet.
