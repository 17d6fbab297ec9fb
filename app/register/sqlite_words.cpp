#include "app/register/sqlite_words.h"

#include <utility>

#include <sqlite3.h>

#include "core/error/register_errors.h"

namespace latchround {

namespace {

Phrase constraintPhrase(int code, const std::string& detail) {
    switch (code) {
    case SQLITE_CONSTRAINT_FOREIGNKEY:
        return errors::refers_to_unknown();
    case SQLITE_CONSTRAINT_TRIGGER:
        return errors::record_never_changed(detail);
    case SQLITE_CONSTRAINT_DATATYPE:
        return errors::value_of_wrong_kind();
    case SQLITE_CONSTRAINT_NOTNULL:
        return errors::value_missing(detail);
    case SQLITE_CONSTRAINT_PRIMARYKEY:
    case SQLITE_CONSTRAINT_UNIQUE:
        return errors::recorded_twice(detail);
    default:
        return errors::value_not_allowed(detail);
    }
}

Phrase phraseOf(int code, const std::string& detail) {
    switch (code & 0xff) {
    case SQLITE_FULL:
        return errors::disk_full();
    case SQLITE_IOERR:
        return errors::disk_fault(code);
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return errors::somebody_is_writing();
    case SQLITE_READONLY:
    case SQLITE_PERM:
        return errors::register_write_protected();
    case SQLITE_CANTOPEN:
        return errors::register_not_opened(code);
    case SQLITE_CORRUPT:
        return errors::register_corrupt(code);
    case SQLITE_NOTADB:
        return errors::no_register();
    case SQLITE_NOMEM:
        return errors::out_of_memory();
    case SQLITE_TOOBIG:
        return errors::too_large_for_register();
    case SQLITE_CONSTRAINT:
        return constraintPhrase(code, detail);
    default:
        return errors::sqlite_said(detail, code);
    }
}

} // namespace

Error errorOf(int code, const std::string& detail, const std::string& where, Doing doing) {
    Phrase what = phraseOf(code, detail);
    return {where, doing == Doing::Saving ? errors::not_saved(std::move(what)) : what};
}

bool needsReopening(int code) {
    const int family = code & 0xff;
    return family == SQLITE_IOERR || family == SQLITE_CORRUPT || family == SQLITE_CANTOPEN;
}

Register::Obstacle obstacleOf(int code) {
    switch (code & 0xff) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return Register::Obstacle::Busy;
    case SQLITE_OK:
    case SQLITE_ROW:
    case SQLITE_DONE:
    case SQLITE_CONSTRAINT:
    case SQLITE_MISMATCH:
    case SQLITE_TOOBIG:
        return Register::Obstacle::Refused;
    default:
        return Register::Obstacle::Fault;
    }
}

} // namespace latchround
