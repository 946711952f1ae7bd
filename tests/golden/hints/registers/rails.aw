# Two rails, two equal laths between them.
RS ∥ TU
V is between R and S
T, W, X, U lie on a line in this order
R and T are on the same side of VW
VW = VX
angle RVW = 64
find: angle WVX
