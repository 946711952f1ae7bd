# A panel with equal opposite laths, for a class that knows angles and parallels but no congruence.
taught: angles
KLMN is a convex quadrilateral
KL = MN
LM = NK
join KM
angle LKM = 34
find: angle NMK
