# Two pairs of equal laths make a kite; SU is the cross-lath. (congruence, numeric)
convex: R, S, T, U
RS = RU
TS = TU
angle SRT = 34
angle RTS = 51
find: angle RUT
