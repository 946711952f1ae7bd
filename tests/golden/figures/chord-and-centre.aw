# A round hoop with hub O; three knots on its rim. (circle)
circle: centre O through K, L, M
inside: O inside triangle KLM
angle KOL = 124
angle LOM = 96
find: angle KLM
