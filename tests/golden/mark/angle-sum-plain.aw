triangle: KLM
line: P, K, Q in this order
parallel: PQ, LM
P and M are on opposite sides of KL.
Q and L are on opposite sides of KM.
taught: parallel lines, angle facts
prove: angle KLM + angle LKM + angle KML = 180
work:
∠PKL + ∠LKM + ∠MKQ = 180° (straight line)
∠PKL = ∠KLM (alternate angles)
similarly ∠MKQ = ∠KML
~~∠KML = 60°~~
so ∠KLM + ∠LKM + ∠KML = 180°
