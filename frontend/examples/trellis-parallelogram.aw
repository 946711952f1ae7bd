# Four laths make a parallelogram that can be folded, and RT is a string across it.
RSTU is a parallelogram.
angle URS = 116
angle SRT = 41
find: angle RTS
