# Three sizes were written on a frame that cannot be nailed together. (the givens exclude each other)
triangle: KLM
angle KLM = 64
angle LMK = 58
angle MKL = 60
find: angle KLM
