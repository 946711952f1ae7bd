RSTU is a parallelogram
angle URS = 116
angle SRT = 41
find: angle RTS
work:
∠TRU = 116 − 41 = 75
∠RTS = ∠TRU because it looks so
∠RTS = 75°
∠RST = 64°
what about ∠RXT?
