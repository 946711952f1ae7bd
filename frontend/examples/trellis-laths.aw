# Laths KL and PQ are parallel, the lath KQ is nailed across them. How steep is the lath LQ?
KL ∥ PQ
L and P are on opposite sides of KQ.
KL = KQ
angle PQK = 52
find: angle KLQ
