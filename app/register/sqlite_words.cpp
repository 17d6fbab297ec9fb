#include "app/register/sqlite_words.h"

#include <sqlite3.h>

namespace latchround {

namespace {

struct Words {
    std::string what;
    std::string remedy;
};

Words constraintWords(int code, const std::string& detail) {
    switch (code) {
    case SQLITE_CONSTRAINT_FOREIGNKEY:
        return {"it refers to something that is not in this register",
                "Record what it refers to first."};
    case SQLITE_CONSTRAINT_TRIGGER:
        return {"what is recorded is never changed or deleted (" + detail + ")",
                "Record a correction instead."};
    case SQLITE_CONSTRAINT_DATATYPE:
        return {"a text holds bytes that are no valid text, or a value is of the wrong kind",
                "Enter it again."};
    case SQLITE_CONSTRAINT_NOTNULL:
        return {"a value is missing or is not a number (" + detail + ")", "Enter it again."};
    case SQLITE_CONSTRAINT_PRIMARYKEY:
    case SQLITE_CONSTRAINT_UNIQUE:
        return {"it is there twice (" + detail + ")", "Leave one of the two out."};
    default:
        return {"a value is not one the register allows (" + detail + ")", "Enter it again."};
    }
}

Words wordsOf(int code, const std::string& detail) {
    const std::string number = " (SQLite " + std::to_string(code) + ")";
    switch (code & 0xff) {
    case SQLITE_FULL:
        return {"the disk is full", "Free some space and try again."};
    case SQLITE_IOERR:
        return {"the disk reports a fault" + number,
                "Try again; if it comes back, save the register to another disk."};
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return {"another program is writing to this register",
                "Wait a moment or close the other program, then try again."};
    case SQLITE_READONLY:
    case SQLITE_PERM:
        return {"the register may not be written here",
                "Copy it to a folder you may write to and open it there."};
    case SQLITE_CANTOPEN:
        return {"the file cannot be opened" + number,
                "Check that the disk is connected and that you may write to the folder."};
    case SQLITE_CORRUPT:
        return {"the file is damaged" + number, "Open the last backup instead."};
    case SQLITE_NOTADB:
        return {"this is no vessel register", "Choose another file."};
    case SQLITE_NOMEM:
        return {"the computer is out of memory", "Close other programs and try again."};
    case SQLITE_TOOBIG:
        return {"it is too large for the register", "Use a smaller photograph or a shorter text."};
    case SQLITE_CONSTRAINT:
        return constraintWords(code, detail);
    default:
        return {detail + number, "Try again; if it comes back, open the last backup."};
    }
}

} // namespace

Complaint complaintOf(int code, const std::string& detail, const std::string& where, Doing doing) {
    Words words = wordsOf(code, detail);
    if (doing == Doing::Saving)
        words.what += ": NOT saved";
    return Complaint{where, words.what + ".", words.remedy};
}

bool needsReopening(int code) {
    const int family = code & 0xff;
    return family == SQLITE_IOERR || family == SQLITE_CORRUPT || family == SQLITE_CANTOPEN;
}

} // namespace latchround
