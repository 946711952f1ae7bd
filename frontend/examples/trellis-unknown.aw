# A lath KT rises from the straight rail SKU; both angles were written down with the same unknown.
line: S, K, U in this order
angle SKT = 3x + 12
angle TKU = 2x - 7
find: x
