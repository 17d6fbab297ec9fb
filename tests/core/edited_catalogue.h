// The catalogue that ships with something in its files edited, as a new edition would be.
#pragma once

#include <functional>
#include <string>

#include <nlohmann/json.hpp>

#include "core/requirement/catalogue.h"
#include "tests/core/given.h"

namespace latchround::given {

/// Every file of rows as JSON; the fire tables stay as they are.
inline Catalogue edited(const std::function<void(nlohmann::json& file)>& edit) {
    nlohmann::json all = nlohmann::json::parse(ruleTextsOf(catalogue()));
    for (nlohmann::json& entry : all["texts"]) {
        nlohmann::json file = nlohmann::json::parse(entry["text"].get<std::string>());
        edit(file);
        entry["text"] = file.dump();
    }
    return catalogueOfTexts(all.dump(), "edited").value();
}

/// One row edited.
inline Catalogue edited(const std::string& id,
                        const std::function<void(nlohmann::json& row)>& edit) {
    return edited([&](nlohmann::json& file) {
        for (nlohmann::json& row : file["rows"])
            if (row["id"] == id)
                edit(row);
    });
}

inline Catalogue without(const std::string& id) {
    return edited([&](nlohmann::json& file) {
        nlohmann::json& rows = file["rows"];
        for (std::size_t i = 0; i < rows.size(); ++i)
            if (rows[i]["id"] == id)
                rows.erase(i--);
    });
}

} // namespace latchround::given
