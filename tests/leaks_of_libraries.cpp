// What libraries keep until the process ends, so that the leak check speaks of our own code alone.
// Linked into every test program of the sanitize preset. Each line has its reason; nothing of ours
// may stand here.
extern "C" const char* __lsan_default_suppressions();

extern "C" const char* __lsan_default_suppressions() {
    return
        // Qt keeps one gesture recogniser for each widget that was ever scrolled by a finger.
        "leak:QScroller::grabGesture\n"
        // The tests' touch screen stays with Qt's list of devices.
        "leak:QTest::createTouchDevice\n";
}
