# The angle sum from the plainest figure: a lath PQ through the knot K, parallel to LM, for a class that knows about parallels.
triangle: KLM
line: P, K, Q in this order
parallel: PQ, LM
P and M are on opposite sides of KL.
Q and L are on opposite sides of KM.
taught: parallel lines, angle facts
prove: angle KLM + angle LKM + angle KML = 180
