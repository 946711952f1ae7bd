# Five equal laths, nailed to a regular pentagon, and a sixth from G to J.
polygon: GHJKL regular, in this order
find: angle HGJ
