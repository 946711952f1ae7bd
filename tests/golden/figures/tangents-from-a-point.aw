# Two laths from P touch the hoop at S and T. (tangent)
circle: centre O through S, T
tangent: line PS touches circle O at S
tangent: line PT touches circle O at T
angle SPT = 52
find: angle OST
