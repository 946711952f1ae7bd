# As the first, but nobody says on which side of the lath P is nailed.
KL ∥ PQ
KL = KQ
angle PQK = 52
find: angle KLQ
answer: 64°
