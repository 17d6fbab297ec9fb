// One program at a time writes in a register. The lock lies on a file of its own beside it
// ("VESSEL.db.writer", which says who holds it), so that nothing that opens and closes the register
// or its log can drop it; it ends with the program, whichever way that ends.
#pragma once

#include <memory>
#include <string>

#include <QString>

#include "core/phrase/phrase.h"

namespace latchround {

class WriterLock {
public:
    /// Null where another program holds it for a second on end: one that only ends, or looks, has
    /// let go by then. All of one program share it.
    static std::shared_ptr<const WriterLock> take(const QString& register_file);
    /// Who holds it, as its file says: errors::process_on_machine, or errors::another_program.
    static Phrase holderOf(const QString& register_file);

    ~WriterLock();
    WriterLock(const WriterLock&) = delete;
    WriterLock& operator=(const WriterLock&) = delete;

private:
    WriterLock(std::string path, int descriptor);
    static std::shared_ptr<const WriterLock> takeNow(const std::string& path);

    std::string m_path;
    int m_descriptor; ///< below 0 where the file system knows no locks: then nothing is locked
};

} // namespace latchround
