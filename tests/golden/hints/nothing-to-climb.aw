# Not enough is said: there is no ladder, and the page says so.
In triangle KLM, angle KLM = 70
find: angle LKM
