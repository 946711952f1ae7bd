# Two laths cross at T: why are opposite angles equal? For a class that knows the straight line only. (general)
line: R, T, S in this order
line: U, T, V in this order
triangle: RTU
taught: angles on a straight line
prove: angle RTU = angle STV
