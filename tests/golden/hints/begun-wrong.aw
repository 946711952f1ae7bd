# A wrong angle, and a reason that is missing.
RS ∥ TU
V is between R and S
T, W, X, U lie on a line in this order
R and T are on the same side of VW
VW = VX
angle RVW = 64
find: angle WVX
work:
∠SVW = 116°
∠VWX = 116° (alternate angles, RS ∥ TU)
