# A brace that halves the angle outside an isosceles panel runs beside its foot.
In triangle DEF, DE = DF
ED is produced to G
DH bisects angle GDF
prove: DH ∥ EF
