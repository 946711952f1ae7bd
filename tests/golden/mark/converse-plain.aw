triangle: KLM
angle KLM = angle KML
P is on LM
KP bisects angle LKM
prove: LP = PM
work:
KL = KM (base angles)
∠LKP = ∠MKP (given)
KP = KP (common side)
△LKP ≅ △MKP (SAS)
LP = PM
