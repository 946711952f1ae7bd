# Two rails are nailed across a lath at angles that were measured. Are they parallel? (converse)
line: P, K, Q in this order
line: R, L, S in this order
sides: P and R on the same side of KL
angle PKL = 112
angle RLK = 68
prove: PQ ∥ RS
