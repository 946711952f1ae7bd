# Two laths stand at right angles on two sides of a frame. (numeric)
acute: KLM
line: L, P, M in this order
line: K, Q, M in this order
KP ⟂ LM
LQ ⟂ KM
line: K, T, P in this order
line: L, T, Q in this order
angle LKM = 63
angle KLM = 54
find: angle LTP
