// How the sanitizers look at every test program of the sanitized preset, however it is started.
extern "C" const char* __asan_default_options();
extern "C" const char* __lsan_default_suppressions();

/// A quarter of the usual quarantine for freed memory: our tests are too short to need more.
extern "C" const char* __asan_default_options() {
    return "quarantine_size_mb=64"
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
