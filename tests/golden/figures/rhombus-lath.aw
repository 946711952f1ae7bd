# Four equal laths; the cross-lath KM makes 27° with the side KL. (quadrilateral)
KLMN is a rhombus.
angle LKM = 27
find: angle KNM
