# Two rails are parallel, and the angles between them on one side of the lath KL are halved. (parallel, general)
KP ∥ LQ
P and Q are on the same side of KL.
bisects: ray KT bisects angle PKL
bisects: ray LT bisects angle QLK
prove: angle KTL = 90
