# Two props of equal length, AD and BC, hold up a lath AB and lean the same way in. Are the laths AC and BD equal?
convex: A, B, C, D
AD = BC
angle DAB = angle ABC
prove: AC = BD
