# A frame of five laths whose angles were noted with one unknown. (polygon, unknown x)
polygon: KLMNP convex, in this order
angle PKL = x + 40
angle KLM = 2x
angle LMN = 2x + 20
angle MNP = x + 60
angle NPK = 3x - 30
find: angle LMN
