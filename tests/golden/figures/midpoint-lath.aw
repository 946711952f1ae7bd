# The lath MN joins the middles of two sides of the frame. (parallel)
triangle: KLP
midpoint: M of KL
midpoint: N of KP
angle KLP = 73
find: angle KMN
