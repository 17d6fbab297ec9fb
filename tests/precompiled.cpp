// Nothing but what CMake needs to precompile headers for the folders beside it.
