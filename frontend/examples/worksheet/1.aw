# Two rails, a lath across: the alternate angle, and then the base angles.
KL ∥ PQ
L and P are on opposite sides of KQ
KL = KQ
angle PQK = 52
find: angle KLQ
answer: 64°
