# Two props of equal length at equal angles.
triangle: KLM
triangle: PQR
KL = PQ
KM = PR
angle LKM = angle QPR
prove: angle KLM = angle PQR
