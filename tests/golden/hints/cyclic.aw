# Four knots on a ring, and a lath that goes on.
K, L, M, N lie on a circle in this order
KN is produced to P
KL = KM
angle MNP = 71
find: angle LKM
