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
     QT_TRANSLATE_NOOP("Core", "this is not a URL: in a password, percent-encode every character "
                               "that is not a letter or digit, such as %1 for @"),
     as_url},
    {errors::not_postgresql, QT_TRANSLATE_NOOP("Core", "only PostgreSQL databases are supported"),
     as_url},
    {errors::semicolon_in_option, QT_TRANSLATE_NOOP("Core", "an option contains a semicolon"),
     as_url},
    {errors::names_no_database, QT_TRANSLATE_NOOP("Core", "it names no database"), as_url},

    {errors::no_postgresql_driver,
     QT_TRANSLATE_NOOP("Core", "Qt's PostgreSQL driver is not installed"),
     QT_TRANSLATE_NOOP("Core", "Install the package libqt6sql6-psql.")},
    {errors::no_connection, QT_TRANSLATE_NOOP("Core", "no connection: %1"),
     QT_TRANSLATE_NOOP("Core", "Check the address, name and password, and that the server is "
                               "running.")},
    {errors::connection_cut, QT_TRANSLATE_NOOP("Core", "the connection was lost"),
     QT_TRANSLATE_NOOP("Core", "Run it again.")},
    {errors::tried_again, "%1", QT_TRANSLATE_NOOP("Core", "Trying again.")},
    {errors::files_not_reached,
     QT_TRANSLATE_NOOP("Core", "the connection was lost: %1 files NOT imported, from %2 on"),
     QT_TRANSLATE_NOOP("Core",
                       "Run the same command again; files already imported stay imported.")},
    {errors::database_said, "%1"},

    {errors::database_of_others,
     QT_TRANSLATE_NOOP("Core", "this database holds other data: NOT touched"),
     QT_TRANSLATE_NOOP("Core", "Give an empty one (CREATE DATABASE).")},
    {errors::schema_of_others,
     QT_TRANSLATE_NOOP("Core",
                       "its schema \"latchround\" was not made by this program: NOT touched"),
     QT_TRANSLATE_NOOP("Core", "Give an empty database.")},
    {errors::database_without_utf8,
     QT_TRANSLATE_NOOP("Core", "this database does not store text as UTF-8: NOT touched"),
     QT_TRANSLATE_NOOP("Core", "Create one WITH ENCODING 'UTF8' TEMPLATE template0.")},
    {errors::newer_tables,
     QT_TRANSLATE_NOOP("Core", "the tables were made by a newer program (version %1; this one "
                               "reads up to %2): NOT touched"),
     QT_TRANSLATE_NOOP("Core", "Update this program.")},

    {errors::vessel_without_number,
     QT_TRANSLATE_NOOP("Core", "its vessel has no identification number"),
     QT_TRANSLATE_NOOP("Core", "Enter the vessel's number aboard, then export again.")},
    {errors::device_with_another_key,
     QT_TRANSLATE_NOOP("Core", "it comes with a different key: %1, fingerprint %2 instead of %3"),
     QT_TRANSLATE_NOOP("Core", "Ask aboard whether the key is new; if so, import the file with "
                               "--accept-key and that key.")},
});

} // namespace

const PhraseRows ashore_errors_rows = ashore_errors_table;

} // namespace latchround::ui
