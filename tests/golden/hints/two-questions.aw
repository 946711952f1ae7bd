# The second question goes on from the first.
In triangle KLM, KL = KM
angle KLM = 73
find: angle KML
find: angle LKM
