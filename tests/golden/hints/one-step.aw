# One lath across two rails: the name of the fact is the last hint.
KL ∥ MN
L and N are on opposite sides of KM
angle KMN = 47
find: angle LKM
