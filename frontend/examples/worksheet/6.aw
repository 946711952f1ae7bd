# Two props of equal length, an equal foot and an equal angle at the post.
triangle: UVW
triangle: XYZ
UV = XY
VW = YZ
angle VUW = angle YXZ
prove: UW = XZ
answer: yes
