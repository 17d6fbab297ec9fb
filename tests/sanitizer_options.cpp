// How the sanitizers look at every test program of the sanitized preset, however it is started.
extern "C" const char* __asan_default_options();
extern "C" const char* __lsan_default_suppressions();

/// Freed memory waits in a quarantine of 8 MiB, and each block keeps the 12 calls it came by: with
/// the usual 256 MiB and 30 calls a third of the time goes into new pages and long stacks.
extern "C" const char* __asan_default_options() {
    return "quarantine_size_mb=8:malloc_context_size=12"
#ifdef LATCHROUND_SYMBOLIZER
           ":external_symbolizer_path=" LATCHROUND_SYMBOLIZER
#endif
        ;
}

/// What libraries keep until the process ends, so that the leak check speaks of our own code alone.
/// Each line has its reason; nothing of ours may stand here.
extern "C" const char* __lsan_default_suppressions() {
    return
        // Qt keeps one gesture recogniser for each widget that was ever scrolled by a finger.
        "leak:QScroller::grabGesture\n"
        // The tests' touch screen stays with Qt's list of devices.
        "leak:QTest::createTouchDevice\n";
}
