# A garden trellis: three laths are nailed together at the knots K, L and M. A fourth lath PQ runs through K,
# parallel to LM; the laths LK and MK go on beyond K, to R and S. The class knows about parallels, and wants to know
# about triangles.
In triangle KLM, PQ ∥ LM.
line: P, K, Q in this order
P and M are on opposite sides of KL.
Q and L are on opposite sides of KM.
LK is produced to R.
MK is produced to S.
taught: parallel lines, angle facts
prove: angle LKM + angle KLM + angle KML = 180
