# Two laths halve neighbouring angles of a four-sided frame. (quadrilateral, numeric)
convex: R, S, T, U
angle STU = 82
angle TUR = 104
bisects: ray RV bisects angle URS
bisects: ray SV bisects angle RST
find: angle RVS
