KL ∥ PQ
L and P are on opposite sides of KQ.
KL = KQ
angle PQK = 52
find: angle KLQ [4]
taught: alternate angles, base angles of an isosceles triangle, triangle-angle-sum
work:
∠PQK = 52° (given)
∠LKQ = 54° (alt ∠s)
∠KLQ = ∠KQL (∠s opp equal sides; KL = KQ)
∴ ∠KLQ = (180° − 54°) ÷ 2 = 63° (∠ sum in Δ)
