# Laths of a steep roof: the classic of the hidden line.
triangle: KLM
KL = KM
angle LKM = 20
U is on KM
V is on KL
angle MLU = 60
angle LMV = 50
find: angle LUV
