# Four knots on a hoop, and one side of the frame goes on beyond the hoop. (circle)
circle: through K, L, M, N (in this cyclic order)
line: L, M, P in this order
angle NKL = 71
angle LNM = 38
find: angle NLM
