# Two laths halve the angles at L and M of the frame KLM and meet at T. (general)
triangle: KLM
bisects: ray LT bisects angle KLM
bisects: ray MT bisects angle KML
prove: angle LTM = 90 + 1/2 angle LKM
