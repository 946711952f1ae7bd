# A lath that touches the ring, and one through the hub.
circle: centre O through S, T
tangent: line PT touches circle O at T
line: O, S, P in this order
angle TPO = 34
find: angle OTS
