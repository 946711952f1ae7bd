# T is nailed at equal distances from three knots. (isosceles, general)
triangle: RSU
line: R, T, S in this order
TR = TS = TU
prove: angle RUS = 90
