KL ∥ PQ
L and P are on opposite sides of KQ.
KL = KQ
angle PQK = 52
find: angle KLQ. Give a reason for each stage of your working. (5 marks)
work:
angle LKQ = 52 because of Z angles
angle KLQ = 64
