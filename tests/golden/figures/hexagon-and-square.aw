# A hexagon of six laths and a square share the lath CD. (polygons)
polygon: ABCDEF regular, in this order
polygon: CDGH square, in this order
sides: A and G on opposite sides of CD
find: angle BCH
