# The angle at the hub would give the answer away, so its step is told without the number.
O is the centre of the circle through E, F, G
line: E, O, F in this order
angle GEF = 42
find: angle EOG
