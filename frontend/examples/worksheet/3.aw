# A triangular panel whose angles do not add up.
triangle: RST
RS = RT
angle RST = 54
angle SRT = 82
find: angle RTS
