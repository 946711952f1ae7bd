# A rectangle of laths: are its two cross-laths equal? For a class that knows congruence, not the theorem. (congruence)
RSTU is a rectangle.
taught: congruence, rectangle-angles, parallelogram-opposite-sides, rectangle-is-parallelogram, congruent-parts
prove: RT = SU
