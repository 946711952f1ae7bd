# A lath KN leaves the knot K between or beyond the two others: the text does not say which. (cases)
angle LKM = 70
angle MKN = 25
find: angle LKN
