# A lath from the top knot to the bottom rail: something has been forgotten.
triangle: KLM
P is on LM
angle KLM = 48
angle LKP = 31
find: angle KML
