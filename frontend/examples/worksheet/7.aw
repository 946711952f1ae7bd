# More is given than anybody needs.
triangle: KLM
KL = KM
angle KLM = 65
angle KML = 65
LM is produced to P
find: angle LKM
answer: 50
