# Why is the angle between tangent and chord the angle at the rim? For a class that has not met that theorem. (tangent, cases)
circle: centre O through K, L, M
inside: O inside triangle KLM
tangent: line PK touches circle O at K
sides: P and M on opposite sides of KL
sides: O and M on the same side of KL
prove: angle PKL = angle KML
