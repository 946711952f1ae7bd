// How the cost of finding the places for rules grows with the figure, up to a hundred thousand instances and more.
#pragma once

namespace prover {

void print_matching(bool quick);

}  // namespace prover
