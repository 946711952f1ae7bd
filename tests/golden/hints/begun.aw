# The pupil has the exterior angle already.
In triangle DEF, DE = DF
ED is produced to G
DH bisects angle GDF
prove: DH ∥ EF
work:
∠GDF = ∠DEF + ∠DFE (exterior angle)
