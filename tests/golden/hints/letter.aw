# Everything depends on one angle.
triangle: JKL
JK = JL
N lies on JL
KN bisects angle JKL
KN = KL
find: angle KJL
