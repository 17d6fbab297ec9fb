// The folder of the user's data in which every vessel has one register file.
#pragma once

#include <vector>

#include <QString>

namespace latchround {

/// Made where it is not there yet. LATCHROUND_DATA in the environment names another place.
QString vesselFolder();

/// Register files in it, by name.
std::vector<QString> registersOnThisMachine();

/// Where the register of a vessel of this name goes: letters and digits of the name, lower case.
QString registerPathFor(const QString& vessel_name);

/// Where a flag's own rules for a vessel lie: beside its register, so that they go where it goes.
QString flagRulesPathFor(const QString& register_path);

/// Where the texts lie by which a vessel's doors were last shown: beside its register too.
QString keptCataloguePathFor(const QString& register_path);

} // namespace latchround
