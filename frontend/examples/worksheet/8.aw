# The answer book has a slip.
RSTU is a parallelogram
angle URS = 116
angle SRT = 41
find: angle RTS
answer: 74°
