# Equal laths inside an isosceles frame: how large is the angle at the top? (isosceles, one unknown several times)
triangle: KLM
KL = KM
line: K, N, M in this order
KN = LN = LM
find: angle LKM
