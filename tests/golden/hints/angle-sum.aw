# The lath through the upper knot makes the three angles stand side by side.
triangle: KLM
line: P, K, Q in this order
PQ ∥ LM
P and L are on the same side of KM
prove: angle KLM + angle LKM + angle KML = 180
