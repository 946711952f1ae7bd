# The lath KL runs through the hub O; M is a knot on the rim. (circle, unknown x)
circle: centre O through K, L, M
line: K, O, L in this order
angle LKM = 2x
angle KLM = 3x
find: x
