# A folding frame: one angle is four times its neighbour. (quadrilateral, equation)
RSTU is a parallelogram.
angle RST = 4 angle STU
find: angle TUR
