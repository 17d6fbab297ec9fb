#include "core/error/ashore_errors.h"

#include <array>

#include "ui/words/phrases/all_phrases.h"

namespace latchround::ui {

namespace {

constexpr const char* as_url =
    QT_TRANSLATE_NOOP("Core", "Give it as postgresql://USER@HOST:PORT/DATABASE, with the password "
                              "in PGPASSWORD or ~/.pgpass.");

constexpr auto ashore_errors_table = std::to_array<PhraseRow>({
    {errors::not_a_url,
     QT_TRANSLATE_NOOP("Core", "this is no URL: signs other than letters and digits in a password "
                               "are written as %1 for @ and so on"),
     as_url},
    {errors::not_postgresql, QT_TRANSLATE_NOOP("Core", "only databases of PostgreSQL are known"),
     as_url},
    {errors::semicolon_in_option, QT_TRANSLATE_NOOP("Core", "an option holds a semicolon"), as_url},
    {errors::names_no_database, QT_TRANSLATE_NOOP("Core", "it names no database"), as_url},

    {errors::no_postgresql_driver,
     QT_TRANSLATE_NOOP("Core", "Qt's PostgreSQL driver is not installed"),
     QT_TRANSLATE_NOOP("Core", "Install the package libqt6sql6-psql.")},
    {errors::no_connection, QT_TRANSLATE_NOOP("Core", "no connection: %1"),
     QT_TRANSLATE_NOOP("Core",
                       "Check the address, the name and the password, and that the server runs.")},
    {errors::connection_cut, QT_TRANSLATE_NOOP("Core", "the connection was cut"),
     QT_TRANSLATE_NOOP("Core", "Run it again.")},
    {errors::tried_again, "%1", QT_TRANSLATE_NOOP("Core", "Trying again.")},
    {errors::files_not_reached,
     QT_TRANSLATE_NOOP("Core", "the connection was cut: %1 files are NOT taken in, from %2 on"),
     QT_TRANSLATE_NOOP("Core", "Run the same command again; what is in stays in.")},
    {errors::database_said, "%1"},

    {errors::database_of_others,
     QT_TRANSLATE_NOOP("Core", "this database holds something else: NOT touched"),
     QT_TRANSLATE_NOOP("Core", "Give an empty one (CREATE DATABASE).")},
    {errors::schema_of_others,
     QT_TRANSLATE_NOOP("Core",
                       "its schema \"latchround\" was not made by this program: NOT touched"),
     QT_TRANSLATE_NOOP("Core", "Give an empty database.")},
    {errors::database_without_utf8,
     QT_TRANSLATE_NOOP("Core", "this database does not keep texts as UTF-8: NOT touched"),
     QT_TRANSLATE_NOOP("Core", "Make one WITH ENCODING 'UTF8' TEMPLATE template0.")},
    {errors::newer_tables,
     QT_TRANSLATE_NOOP("Core", "the tables were made by a newer program (version %1; this one "
                               "knows up to %2): NOT touched"),
     QT_TRANSLATE_NOOP("Core", "Update this program.")},

    {errors::vessel_without_number,
     QT_TRANSLATE_NOOP("Core", "its vessel has no identification number"),
     QT_TRANSLATE_NOOP("Core", "Give the vessel its number aboard, and hand over again.")},
    {errors::device_with_another_key,
     QT_TRANSLATE_NOOP("Core", "it comes with another key than before: %1, fingerprint %2, "
                               "instead of %3"),
     QT_TRANSLATE_NOOP("Core", "Ask aboard whether its key is new; if it is, take the file in with "
                               "--accept-key and that key.")},
});

} // namespace

const PhraseRows ashore_errors_rows = ashore_errors_table;

} // namespace latchround::ui
