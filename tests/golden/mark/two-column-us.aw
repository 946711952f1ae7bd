convex: A, B, C, D
AD = BC
angle DAB = angle ABC
prove: AC = BD
work:
AD = BC | Given
∠DAB = ∠ABC | Given
AB = AB | Reflexive Property
△DAB ≅ △CBA | SSA
AC = BD | CPCTC
