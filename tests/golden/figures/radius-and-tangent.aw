# A lath touches the hoop with hub O at K. (tangent)
circle: centre O through K, L
triangle: OKL
tangent: line KP touches circle O at K
sides: P and L on the same side of OK
angle KOL = 104
find: angle LKP
