# The foot of an isosceles frame goes on to U; its outer angle is known. (numeric)
triangle: RST
RS = RT
line: S, T, U in this order
angle RTU = 117
find: angle SRT
