# A line is needed that is not drawn.
O is the centre of the circle through R, S, T
O is inside triangle RST
angle RTS = 68
find: angle ORS
