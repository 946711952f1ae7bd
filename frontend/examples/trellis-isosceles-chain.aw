# Equal laths zigzag between two rails that meet at V. How large is the angle between the last lath and its rail?
line: V, A, C in this order
line: V, B, D in this order
triangle: VAB
VA = AB = BC
angle AVB = 20
find: angle CBD
