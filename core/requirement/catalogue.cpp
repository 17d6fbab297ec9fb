#include "core/requirement/catalogue.h"

#include <algorithm>
#include <iterator>
#include <set>
#include <utility>

#include <nlohmann/json.hpp>

#include "core/error/catalogue_errors.h"
#include "core/reading/written_json.h"
#include "core/requirement/requirement_reader.h"

namespace latchround {

namespace {

Upkeep upkeepFrom(JsonObject& row) {
    Upkeep into;
    into.id = row.filledText("id", Need::Required).value_or("");
    into.words = row.filledText("words", Need::Required).value_or("");
    into.cite = row.filledText("cite", Need::Required).value_or("");
    into.edition = row.filledText("edition", Need::Optional).value_or("");
    into.every = row.word<Period>("every", Need::Required, periodWords).value_or(into.every);
    into.status = row.word<Status>("status", Need::Required, statusWords).value_or(into.status);
    into.any_of = conditionsFrom(row, "applies");
    into.covers = row.texts("covers", Need::Optional).value_or(into.covers);
    into.shown_by = row.texts("shown_by", Need::Optional).value_or(into.shown_by);
    row.complainOfTheRest();
    return into;
}

/// `into` has what the whole file says.
Profile profileFrom(JsonObject& object, Profile into) {
    into.edition = object.filledText("edition", Need::Optional).value_or(into.edition);
    into.regimes = object.words<Regime>("regimes", regimeWords);
    into.ships = object.filledText("ships", Need::Required).value_or("");
    into.built_from = object.date("built_from", Need::Optional);
    into.built_before = object.date("built_before", Need::Optional);
    into.read_in = object.filledText("read_in", Need::Optional).value_or("");
    into.not_read = object.filledText("not_read", Need::Optional).value_or("");
    object.complainOfTheRest();
    return into;
}

template <class T>
bool haveInCommon(const std::vector<T>& one, const std::vector<T>& other) {
    return std::ranges::any_of(
        one, [&](const T& each) { return std::ranges::find(other, each) != other.end(); });
}

void addOnce(std::string& list, std::vector<std::string>& known, const std::string& entry,
             const char* between) {
    if (entry.empty() || std::ranges::find(known, entry) != known.end())
        return;
    list += (list.empty() ? "" : between) + entry;
    known.push_back(entry);
}

/// Profiles say whom their rows advise, as the rows do.
void noteAdvised(Catalogue& catalogue) {
    for (const Requirement& row : catalogue.rows)
        for (Profile& profile : catalogue.profiles)
            if (&profile == profileOf(catalogue, row))
                for (const Regime regime : row.advises)
                    if (!speaksTo(profile, regime))
                        profile.advises.push_back(regime);
}

class CatalogueFile {
public:
    CatalogueFile(JsonObject& top, JsonFaults& faults)
        : m_top(top)
        , m_faults(faults) {}

    Catalogue read() {
        m_catalogue.edition = m_top.filledText("edition", Need::Required).value_or("");
        m_catalogue.deference = m_top.filledText("deference", Need::Required).value_or("");
        m_issuer = m_top.filledText("issuer", Need::Required).value_or("");
        readProfiles();
        for (JsonObject& row : m_top.objects("rows", Need::Optional, errors::not_a_list_of_rows()))
            readRow(row);
        for (JsonObject& row : m_top.objects("upkeep", Need::Optional))
            readUpkeep(row);
        readSaidOfOthers();
        m_top.complainOfTheRest();
        const Json* rows = m_top.field("rows", Need::Optional);
        if (saysNothing() && (!rows || rows->empty()))
            m_top.complain("rows", errors::not_a_list_of_rows());
        noteAdvised(m_catalogue);
        return std::move(m_catalogue);
    }

private:
    /// A file that names no profile is one by itself.
    void readProfiles() {
        Profile whole;
        whole.edition = m_catalogue.edition;
        whole.issuer = m_issuer;
        whole.deference = m_catalogue.deference;
        for (JsonObject& each : m_top.objects("profiles", Need::Optional)) {
            m_catalogue.profiles.push_back(profileFrom(each, whole));
            m_says_whom_it_is_for = true;
        }
        if (m_catalogue.profiles.empty())
            m_catalogue.profiles.push_back(std::move(whole));
    }

    void readSaidOfOthers() {
        SaidOfOthers said = saidOfOthersFrom(m_top);
        said.edition = m_catalogue.edition;
        said.issuer = m_issuer;
        if (!said.variants.empty() || !said.takes_in.empty())
            m_catalogue.waiting.push_back(std::move(said));
    }

    /// Profiles alone say something: that no text binds.
    bool saysNothing() const {
        return m_catalogue.rows.empty() && m_catalogue.upkeep.empty() &&
               m_catalogue.waiting.empty() && !m_says_whom_it_is_for;
    }

    void readRow(JsonObject& object) {
        Requirement row = requirementFrom(object);
        object.complainOfTheRest();
        stamp(row, m_issuer, m_catalogue.edition);
        mustBeNew(row.id, object);
        checkRequirement(row, object.pointer(), m_faults);
        m_catalogue.rows.push_back(std::move(row));
    }

    void readUpkeep(JsonObject& object) {
        Upkeep row = upkeepFrom(object);
        row.issuer = m_issuer;
        if (row.edition.empty())
            row.edition = m_catalogue.edition;
        mustBeNew(row.id, object);
        m_catalogue.upkeep.push_back(std::move(row));
    }

    void mustBeNew(const std::string& id, JsonObject& row) {
        if (!id.empty() && !m_ids.insert(id).second)
            row.complain("id", errors::row_id_twice(id));
    }

    JsonObject& m_top;
    JsonFaults& m_faults;
    Catalogue m_catalogue;
    std::string m_issuer;
    bool m_says_whom_it_is_for = false;
    std::set<std::string> m_ids;
};

} // namespace

Checked<Catalogue> catalogueFrom(std::string_view text, Phrase name) {
    JsonFaults faults{name};
    const Json document = jsonIn(text);
    if (!document.is_object()) {
        faults.add("", errors::shipped_file_no_object());
        return tl::unexpected(faults.take());
    }
    JsonObject top(document, "", faults);
    Catalogue catalogue = CatalogueFile(top, faults).read();
    if (!faults.empty())
        return tl::unexpected(faults.take());
    for (SaidOfOthers& said : catalogue.waiting)
        said.file = name;
    catalogue.texts = {{false, std::make_shared<const std::string>(text)}};
    return catalogue;
}

Checked<Catalogue> joined(Catalogue one, Catalogue other) {
    Errors errors;
    for (const Requirement& row : other.rows)
        if (findRequirement(one, row.id))
            errors.emplace_back(other.edition, errors::row_in_both_catalogues(row.id));
    if (!errors.empty())
        return tl::unexpected(errors);
    one.edition += "; " + other.edition;
    one.deference += " " + other.deference;
    one.rows.insert(one.rows.end(), std::make_move_iterator(other.rows.begin()),
                    std::make_move_iterator(other.rows.end()));
    one.upkeep.insert(one.upkeep.end(), std::make_move_iterator(other.upkeep.begin()),
                      std::make_move_iterator(other.upkeep.end()));
    one.profiles.insert(one.profiles.end(), std::make_move_iterator(other.profiles.begin()),
                        std::make_move_iterator(other.profiles.end()));
    one.waiting.insert(one.waiting.end(), std::make_move_iterator(other.waiting.begin()),
                       std::make_move_iterator(other.waiting.end()));
    one.texts.insert(one.texts.end(), other.texts.begin(), other.texts.end());
    for (const SaidOfOthers& said : std::exchange(one.waiting, {})) {
        JsonFaults faults{said.file};
        takeIn(one, said, faults);
        const Errors found = faults.take();
        errors.insert(errors.end(), found.begin(), found.end());
    }
    if (!errors.empty())
        return tl::unexpected(errors);
    return one;
}

const Profile* profileOf(const Catalogue& catalogue, const Requirement& row) {
    const Profile* of_edition = nullptr;
    for (const Profile& profile : catalogue.profiles) {
        if (profile.edition != row.edition || profile.issuer != row.issuer)
            continue;
        if (haveInCommon(profile.regimes, row.regimes))
            return &profile;
        if (!of_edition)
            of_edition = &profile;
    }
    return of_edition;
}

std::vector<const Profile*> profilesFor(const Catalogue& catalogue, const Particulars& vessel) {
    const auto speaks = [&](const Profile& profile) { return speaksTo(profile, vessel.regime); };
    const auto isOver = [&](const Profile& profile) {
        return profile.built_before && vessel.keel_laid &&
               *vessel.keel_laid >= *profile.built_before;
    };
    const auto hasLater = [&](const Profile& ended) {
        return std::ranges::any_of(catalogue.profiles, [&](const Profile& profile) {
            return profile.issuer == ended.issuer && speaks(profile) && !isOver(profile);
        });
    };
    std::vector<const Profile*> speaking;
    for (const Profile& profile : catalogue.profiles)
        if (speaks(profile) && !(isOver(profile) && hasLater(profile)))
            speaking.push_back(&profile);
    return speaking;
}

std::string editionFor(const Catalogue& catalogue, const Particulars& vessel) {
    std::string editions;
    std::vector<std::string> known;
    for (const Profile* profile : profilesFor(catalogue, vessel)) {
        const bool of_flag = !catalogue.flag.empty() && profile->issuer == catalogue.flag;
        addOnce(editions, known,
                of_flag ? profile->edition + " (" + profile->issuer + ")" : profile->edition, "; ");
    }
    return editions;
}

std::string deferenceFor(const Catalogue& catalogue, const Particulars& vessel) {
    std::string sentences;
    std::vector<std::string> known;
    for (const Profile* profile : profilesFor(catalogue, vessel))
        addOnce(sentences, known, profile->deference, " ");
    return sentences;
}

const Requirement* findRequirement(const Catalogue& catalogue, std::string_view id) {
    const auto found = std::ranges::find(catalogue.rows, id, &Requirement::id);
    return found == catalogue.rows.end() ? nullptr : &*found;
}

} // namespace latchround
