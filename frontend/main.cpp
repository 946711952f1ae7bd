#include "frontend/command/command.hpp"

int main(int argc, char** argv) { return frontend::run(argc, argv); }
