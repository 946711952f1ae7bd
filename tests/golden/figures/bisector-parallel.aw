# The lath RT halves the outer angle at R of an isosceles frame. Is it parallel to the base? (converse)
triangle: RST
RS = RT
line: S, R, U in this order
bisects: ray RV bisects angle TRU
prove: RV ∥ ST
