# Three rungs are parallel; a lath crosses all of them. (parallel, chain)
line: P, K, Q in this order
line: R, L, S in this order
line: T, M, U in this order
line: K, L, M in this order
PQ ∥ RS
RS ∥ TU
sides: Q and S on the same side of KM
sides: S and U on the same side of KM
angle PKL = 61
find: angle LMU
