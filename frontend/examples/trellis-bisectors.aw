# The lath KT stands on the rail SKU. Two more laths, KV and KW, halve the angles beside it.
line: S, K, U in this order
triangle: SKT
bisects: ray KV bisects angle SKT
bisects: ray KW bisects angle TKU
prove: angle VKT + angle TKW = 90
